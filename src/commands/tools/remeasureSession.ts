import { measureCorrected } from '../../correction/measureCorrected';
import { buildSession } from '../../session/buildSession';
import type { SessionDocument } from '../../session/sessionDocument';
import { sessionTrack } from '../../session/sessionTrack';

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
