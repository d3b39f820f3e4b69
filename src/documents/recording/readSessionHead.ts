import { checkSession } from './checkSession';
import { readDocument, type DocumentKind } from '../reading/readDocument';
import { sessionKind, sessionSchema } from './sessionDocument';
import type { SessionHead } from './sessionHead';

const headKind: DocumentKind<SessionHead> = {
  ...sessionKind,
  schema: sessionSchema.omit({ observed: true }),
};

/**
 * Reads a session without its joints from data that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readSessionHead(data: unknown): SessionHead {
  const head = readDocument(data, headKind);
  checkSession(head);
  return head;
}
