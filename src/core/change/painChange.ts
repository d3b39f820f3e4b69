import { median } from 'd3-array';
import { requireFinite } from '../statistics/requireFinite';

/**
 * From so many points on a change of pain is as large as people call important: whole steps beyond 1.16 (patellofemoral
 * pain, n = 60, Piva 2009, J Rehabil Med 41(3); found for pain that eased).
 */
export const importantPainPoints = 2;

/**
 * From so many points on it is beyond error: whole steps beyond 2.8, the least detectable change on a line of 10 cm
 * (before a knee replacement, n = 75, BMC Musculoskelet Disord 2014, 15:235).
 */
export const detectablePainPoints = 3;

export interface PainChange {
  earlier: number;
  later: number;
  /** later - earlier: below 0 where pain eased. */
  difference: number;
  size: 'small' | 'important' | 'beyond-error';
}

/**
 * Change of pain between two weeks, or two stretches of weeks, by their medians.
 *
 * @param earlier  answers of one kind, such as the worst of each day, 0 to 10, at least one
 * @param later  the same kind, later
 * @throws  RangeError where either is empty or an answer is not of 0 to 10
 */
export function painChange(earlier: readonly number[], later: readonly number[]): PainChange {
  const answers = [...earlier, ...later];
  requireFinite(answers);
  const wrong = answers.find((answer) => answer < 0 || answer > 10);
  if (wrong !== undefined) throw new RangeError(`Pain is 0 to 10, got ${wrong}.`);
  const [then, now] = [median(earlier), median(later)];
  if (then === undefined || now === undefined)
    throw new RangeError('A change of pain needs answers of both times.');
  const difference = now - then;
  const points = Math.abs(difference);
  const size =
    points >= detectablePainPoints ? 'beyond-error' : points >= importantPainPoints ? 'important' : 'small';
  return { earlier: then, later: now, difference, size };
}
