import { concernsOf, isHolding } from '#documents/session/concernsOf';
import type { SessionDocument } from '#documents/session/sessionDocument';

/** After this time without a session, it is asked why; our own choice, no source. */
const silentMs = 7 * 24 * 3_600_000;

/**
 * Since when a plan was not followed, where that is to be asked about: once for each such time, and not of those who
 * were told to have something seen first. ISO 8601; null where nothing is asked.
 *
 * @param sessions  newest first
 * @param acceptedAt  when the plan was accepted here, ISO 8601: it is asked about where it was never begun, too
 * @param isClosed  whether the question since when nothing was done was closed without an answer
 */
export function silentSince(
  sessions: readonly SessionDocument[],
  planId: string,
  acceptedAt: string,
  isClosed: (since: string) => boolean,
  nowMs: number,
): string | null {
  const theirs = sessions.filter((session) => session.planId === planId);
  const last = theirs.find(({ silence }) => silence === null);
  const since = last?.startedAt ?? acceptedAt;
  if (nowMs - Date.parse(since) < silentMs) return null;
  const isAnswered = theirs.some(({ silence }) => silence?.since === since);
  const isHeld = last !== undefined && concernsOf(last).some(isHolding);
  return isAnswered || isHeld || isClosed(since) ? null : since;
}
