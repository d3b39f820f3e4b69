import { taskIds } from '#core/exercises/tasks';
import { SessionProblem } from '../reading/sessionProblem';
import type { VisitDocument, VisitSet } from './visitDocument';

/**
 * Checks what the schema can't say of a visit document: parts that belong together fit.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function checkVisit(visit: VisitDocument): void {
  const fault = visitFault(visit);
  if (fault === null) return;
  throw new SessionProblem(`This visit document is damaged: ${fault}. Save it again where it came from.`);
}

function visitFault({ startedAt, endedAt, sets }: VisitDocument): string | null {
  if (endedAt !== null && Date.parse(endedAt) < Date.parse(startedAt)) return 'it ends before it starts';
  const sessionIds = sets.flatMap(({ sessionId }) => (sessionId === null ? [] : [sessionId]));
  if (new Set(sessionIds).size < sessionIds.length) return 'two of its sets name the same session';
  for (const [index, set] of sets.entries()) {
    const fault = setFault(set);
    if (fault !== null) return `set ${index + 1} ${fault}`;
  }
  return null;
}

function setFault({ task, sessionId, prescribedRepetitions, heldMs }: VisitSet): string | null {
  if ((taskIds as readonly string[]).includes(task)) {
    return heldMs === null ? null : 'has a time held, which its task has not';
  }
  if (sessionId !== null) return 'names a session, and a hold is not measured';
  return prescribedRepetitions === null ? null : 'has repetitions, which a hold has not';
}
