import type { ScoreFacts } from './builtIn';

/** How a score changed between two times; below 0 where it is lower now. */
export interface ScoreChange {
  difference: number;
  /** Null where no error is known. */
  isBeyondError: boolean | null;
  /** Whether it is as large as people call important; null where nothing is published. */
  isImportant: boolean | null;
}

/** Without the last digits, 4.1 less 1.1 would be a little less than 3. */
const whole = (value: number) => Number(value.toFixed(6));

/** @param facts  beyond error is more than the least detectable change, important is as much as the published one */
export function scoreChange(
  earlier: number,
  later: number,
  { detectable, important }: ScoreFacts,
): ScoreChange {
  const difference = whole(later - earlier);
  const size = Math.abs(difference);
  return {
    difference,
    isBeyondError: detectable === null ? null : size > detectable.points,
    isImportant: important === null ? null : size >= important.points,
  };
}
