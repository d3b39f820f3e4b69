import { checkSession } from './checkSession';
import { readDocument } from '../reading/readDocument';
import { sessionKind, type SessionDocument } from './sessionDocument';

/**
 * Reads a visit document from data that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readSession(data: unknown): SessionDocument {
  const session = readDocument(data, sessionKind);
  checkSession(session);
  return session;
}
