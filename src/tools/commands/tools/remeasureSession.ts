import { measureCorrected } from '#core/correction/measureCorrected';
import { buildSession } from '#documents/recording/buildSession';
import type { SessionDocument } from '#documents/recording/sessionDocument';
import { sessionTrack } from '#documents/recording/sessionTrack';

/** Everything of a session document but what is derived. */
export type ObservedSession = Omit<SessionDocument, 'format' | 'version' | 'derived'>;

/** Derives a session's results anew from the joints that it holds. */
export function remeasureSession(before: ObservedSession): SessionDocument {
  const track = sessionTrack(before);
  const { measurement, excluded } = measureCorrected(track, before.setup, before.corrections ?? []);
  return buildSession({
    ...before,
    createdAt: new Date(before.createdAt),
    model: before.observed.model,
    track,
    measurement,
    excluded,
  });
}
