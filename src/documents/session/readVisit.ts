import { checkVisit } from './checkVisit';
import { readDocument } from '../reading/readDocument';
import { visitKind, type VisitDocument } from './visitDocument';

/**
 * Reads a visit document from data that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readVisit(data: unknown): VisitDocument {
  const visit = readDocument(data, visitKind);
  checkVisit(visit);
  return visit;
}
