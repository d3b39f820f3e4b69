import { readJson } from '../reading/readDocument';
import { readSession } from './readSession';
import { sessionKind, type SessionDocument } from './sessionDocument';

/**
 * Reads a visit document from text that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function parseSession(text: string): SessionDocument {
  return readSession(readJson(text, sessionKind.name));
}
