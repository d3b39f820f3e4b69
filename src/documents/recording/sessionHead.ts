import type { SessionDocument } from './sessionDocument';

/** A session without the joints of each frame: small, and all of it that a review changes. */
export type SessionHead = Omit<SessionDocument, 'observed'>;

export function sessionHead(session: SessionDocument): SessionHead {
  const head: SessionHead & { observed?: unknown } = { ...session };
  delete head.observed;
  return head;
}
