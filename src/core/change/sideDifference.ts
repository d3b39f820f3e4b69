import { mean, sum } from 'd3-array';
import { changeBeyondError, type Change } from '../statistics/detectableChange';
import { requireFinite } from '../statistics/requireFinite';

/** One leg's angle, with what is known of its error, degrees, one standard deviation each. */
export interface LegAngle {
  deg: number;
  /** From how the body was turned to the camera. */
  yawSdDeg: number;
  /** From everything else. */
  otherSdDeg: number;
}

/** Both legs on one day, under the same conditions. */
export interface LegPair {
  left: LegAngle;
  right: LegAngle;
}

/** Whether the camera stood still and the view was read once for both legs, or each leg had its own. */
export const placings = ['same', 'own'] as const;
export type Placing = (typeof placings)[number];

export interface SideDifference extends Change {
  days: number;
  leftDeg: number;
  rightDeg: number;
  /** Half-width of its 95 % interval, degrees. */
  bandDeg: number;
}

/**
 * Difference left - right of the knee angle, with its error.
 *
 * Inward is the opposite way in the picture for the two legs, so a view read wrongly adds to one leg what it takes from
 * the other. With one placing for both legs the errors of the view add up: SE^2 = oL^2 + oR^2 + (yL + yR)^2. With
 * a placing for each leg they are independent: yL^2 + yR^2.
 *
 * @param days  at least one; their errors are taken as independent, so the camera is placed anew each day
 * Sign:    'higher' = left farther inward than right by more than error
 * @throws  RangeError without a day, where a number is not finite, or an error is below 0
 * Source:  propagation of errors (JCGM 100:2008, 5.1 and 5.2)
 */
export function sideDifference(days: readonly LegPair[], placing: Placing): SideDifference {
  if (days.length === 0) throw new RangeError('A difference of sides needs at least one day.');
  const legs = days.flatMap(({ left, right }) => [left, right]);
  requireFinite(legs.flatMap(({ deg, yawSdDeg, otherSdDeg }) => [deg, yawSdDeg, otherSdDeg]));
  const wrong = legs.flatMap(({ yawSdDeg, otherSdDeg }) => [yawSdDeg, otherSdDeg]).find((sd) => sd < 0);
  if (wrong !== undefined) throw new RangeError(`A standard deviation is 0 or above, got ${wrong}.`);
  const variance = sum(days, (day) => varianceOf(day, placing)) / days.length ** 2;
  const bandDeg = 1.96 * Math.sqrt(variance);
  const [leftDeg, rightDeg] = [mean(days, ({ left }) => left.deg)!, mean(days, ({ right }) => right.deg)!];
  return { ...changeBeyondError(rightDeg, leftDeg, bandDeg), days: days.length, leftDeg, rightDeg, bandDeg };
}

function varianceOf({ left, right }: LegPair, placing: Placing): number {
  const view =
    placing === 'same' ? (left.yawSdDeg + right.yawSdDeg) ** 2 : left.yawSdDeg ** 2 + right.yawSdDeg ** 2;
  return left.otherSdDeg ** 2 + right.otherSdDeg ** 2 + view;
}
