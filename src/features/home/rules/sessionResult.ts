import { greatest } from 'd3-array';
import type { SetSummary } from '../guide/summariseSet';

export interface SummarisedSet {
  summary: SetSummary;
}

/** The set with the one thing that was done well, and the one with what is to be practised. */
export interface SessionResult<Set extends SummarisedSet> {
  well: Set;
  practise: Set;
}

/** The two sets that the result of a session speaks of; null where no set says anything. */
export function sessionResult<Set extends SummarisedSet>(sets: readonly Set[]): SessionResult<Set> | null {
  const well = greatest(sets, ({ summary }) => summary.inLineShare ?? -1);
  const practise = greatest(sets, ({ summary }) => summary.faults ?? -1);
  return well === undefined || practise === undefined ? null : { well, practise };
}
