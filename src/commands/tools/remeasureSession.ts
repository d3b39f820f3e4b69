import { measureSet } from '../../measurement/measureSet';
import { buildSession } from '../../session/buildSession';
import type { SessionDocument } from '../../session/sessionDocument';
import { sessionTrack } from '../../session/sessionTrack';

/** Everything of a session document but what is derived. */
export type ObservedSession = Omit<SessionDocument, 'format' | 'version' | 'derived'>;

/** Derives a session's results anew from the joints that it holds. */
export function remeasureSession(before: ObservedSession): SessionDocument {
  const track = sessionTrack(before);
  return buildSession({
    ...before,
    createdAt: new Date(before.createdAt),
    model: before.observed.model,
    track,
    measurement: measureSet(track, before.setup),
  });
}
