import type { SessionSet } from './sessionDocument';

/** The line of a recording that no plan asked for, of which nothing else is known. @param number  from 1 */
export function unplannedSet(
  { id, task, side }: Pick<SessionSet, 'task' | 'side'> & { id: string },
  number: number,
): SessionSet {
  return {
    sessionId: id,
    item: 0,
    task,
    side,
    number,
    prescribedRepetitions: null,
    painDuring: null,
    cutShort: null,
    heldMs: null,
    conditions: null,
  };
}
