import { measureCorrected } from '../../correction/measureCorrected';
import { deriveSession } from '../../session/buildSession';
import type { SessionDocument } from '../../session/sessionDocument';
import type { SessionHead } from '../../session/sessionHead';
import { sessionTrack } from '../../session/sessionTrack';

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
