import type { SessionDocument } from './sessionDocument';

/** A session with what was settled in another version of it; the same object where there is no more. */
export function withSettlements(session: SessionDocument, other: SessionDocument): SessionDocument {
  const known = new Set(session.settles.map((one) => JSON.stringify(one)));
  const added = other.settles.filter((one) => !known.has(JSON.stringify(one)));
  return added.length === 0 ? session : { ...session, settles: [...session.settles, ...added] };
}

/** When a therapist last signed in it that something is settled, ms since 1970; -Infinity where none did. */
export function lastSettledAt({ settles }: SessionDocument): number {
  const times = settles.filter(({ by }) => by === 'therapist').map(({ at }) => Date.parse(at));
  return Math.max(-Infinity, ...times);
}

/** What of a version stays where another one counts, as JSON: all but what was settled, which counts from both. */
export function versionText(session: SessionDocument): string {
  return JSON.stringify({ ...session, settles: [] });
}
