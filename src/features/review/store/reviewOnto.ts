import { measureCorrected } from '#core/correction/measureCorrected';
import { deriveSession } from '#documents/recording/buildSession';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import type { SessionHead } from '#documents/recording/sessionHead';
import { sessionTrack } from '#documents/recording/sessionTrack';

/** A session with newer joints, with what a review of the older ones set: measured and judged as that says. */
export function reviewOnto(newer: SessionDocument, reviewed: SessionHead): SessionDocument {
  const { limits, setup, review, corrections = [] } = reviewed;
  const { measurement, excluded } = measureCorrected(sessionTrack(newer), setup, corrections);
  return {
    ...newer,
    ...{ limits, setup },
    ...(corrections.length > 0 ? { corrections } : {}),
    ...(review === undefined ? {} : { review }),
    derived: deriveSession(measurement, limits, excluded),
  };
}
