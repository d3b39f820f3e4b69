import { readDocument } from '../reading/readDocument';
import type { SessionDocument } from './sessionDocument';
import { sessionKind } from './sessionKind';

/**
 * Reads a session document from data that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readSession(data: unknown): SessionDocument {
  return readDocument(data, sessionKind);
}
