import { readJson } from '../reading/readDocument';
import { readVisit } from './readVisit';
import { visitKind, type VisitDocument } from './visitDocument';

/**
 * Reads a visit document from text that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function parseVisit(text: string): VisitDocument {
  return readVisit(readJson(text, visitKind.name));
}
