import { parseDocument } from '../reading/readDocument';
import type { SessionDocument } from './sessionDocument';
import { sessionKind } from './sessionKind';

/**
 * Reads a session document from text that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parseSession(text: string): SessionDocument {
  return parseDocument(text, sessionKind);
}
