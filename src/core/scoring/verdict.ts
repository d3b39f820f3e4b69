import { gradeOf, grades, sideOf, type Sureness } from '../chance/grade';

export const verdicts = [...grades, 'not-measured'] as const;
/** What is said of a repetition: a grade, or that it could not be measured. */
export type Verdict = (typeof verdicts)[number];

/** From the one that decides first. */
export const byGravity: readonly Verdict[] = [
  'out',
  'probably-out',
  'not-measured',
  'cant-tell',
  'probably-in',
  'in',
];

/** With less of the loaded time measured than this share, nothing is said of a repetition. */
export const leastMeasuredShare = 1 / 3;

/** @param chanceInLine  0 to 1; null where it was not measured */
export function verdictOf(chanceInLine: number | null, sureness: Sureness): Verdict {
  return chanceInLine === null ? 'not-measured' : gradeOf(chanceInLine, sureness);
}

/** The side of its limits that a verdict names; null where it names none. */
export function verdictSide(verdict: Verdict): 'in' | 'out' | null {
  return verdict === 'not-measured' ? null : sideOf(verdict);
}
