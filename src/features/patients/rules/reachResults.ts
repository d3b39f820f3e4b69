import { greatest } from 'd3-array';
import type { AssessmentId } from '#core/assessments/assessments';
import { balanceReach, type BalanceReach } from '#core/assessments/balanceReach';
import type { Side } from '#core/protocol/side';
import { isoDay } from '#words/dateWords';
import type { AssessmentCourse } from './assessmentResults';

/** The three directions of the balance reach, in the order in which they are done. */
export const reachDirections = [
  { test: 'reach-front', name: 'To the front' },
  { test: 'reach-back-inward', name: 'Backwards, across' },
  { test: 'reach-back-outward', name: 'Backwards, outward' },
] as const satisfies readonly { test: AssessmentId; name: string }[];
export const legLength = 'leg-length' satisfies AssessmentId;

/** Whether a test is one of the parts of the balance reach. */
export function isOfReach(id: string): boolean {
  return id === legLength || reachDirections.some(({ test }) => test === id);
}

/** What is known of one leg's reaches. */
export interface LegReach {
  /** Last measured; null where it was not. */
  legCm: number | null;
  /** Best of each direction, cm; null where it was not done. In the order of `reachDirections`. */
  reachCm: (number | null)[];
  /** In percent of the leg; null without its length, or without all three directions. */
  ofLeg: BalanceReach | null;
}

/** The latest day on which reaches were done, with all that was done on it. */
export interface ReachResults {
  /** ISO 8601, of the entry. */
  at: string;
  by: string;
  asDone: string;
  legs: Record<Side, LegReach>;
}

/**
 * The balance reach of its latest day.
 *
 * @param courses  the tests of a patient
 * Missing: null where no direction was done; directions of other days are not put together, the leg's length is
 */
export function reachResults(courses: readonly AssessmentCourse[]): ReachResults | null {
  const done = (id: AssessmentId) => courses.find(({ assessment }) => assessment.id === id)?.done ?? [];
  const all = reachDirections.flatMap(({ test }) => done(test));
  const last = greatest(all, ({ record }) => record.at);
  if (last === undefined) return null;
  const { at, by, asDone } = last.record;
  const legOf = (side: Side): LegReach => {
    const reachCm = reachDirections.map(({ test }) => {
      const found = done(test).at(-1);
      return found !== undefined && isoDay(found.record.at) === isoDay(at) ? found.results[side] : null;
    });
    const lengths = done(legLength).flatMap(({ results }) => results[side] ?? []);
    const legCm = lengths.at(-1) ?? null;
    return { legCm, reachCm, ofLeg: shareOfLeg(reachCm, legCm) };
  };
  return { at, by, asDone, legs: { left: legOf('left'), right: legOf('right') } };
}

/** Null without a length, or without all three directions. */
export function shareOfLeg(
  [front = null, backInward = null, backOutward = null]: readonly (number | null)[],
  legCm: number | null,
): BalanceReach | null {
  if (front === null || backInward === null || backOutward === null || legCm === null || legCm <= 0)
    return null;
  return balanceReach({ front, backInward, backOutward }, legCm);
}
