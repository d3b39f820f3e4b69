import { mean, sum } from 'd3-array';
import { requireFinite } from './requireFinite';
import { studentQuantile95 } from './studentQuantile';

export interface Trend {
  /** Repetitions that were measured. */
  count: number;
  /** Least-squares slope: change of the value from one repetition to the next, in its unit. */
  slope: number;
  /** Standard error of the slope, from how far the values are off the line. */
  standardError: number;
  /** 95 % confidence interval of the slope, slope -+ t SE with count - 2 degrees of freedom. */
  low: number;
  high: number;
  /** Whether the interval excludes 0: a drift that the scatter of the repetitions does not explain. */
  isBeyondError: boolean;
}

/**
 * Whether a value drifts over the repetitions of a set, as it may with fatigue.
 *
 * slope = sum (x - mean x)(y - mean y) / sum (x - mean x)^2; SE = sqrt(sum of squared residuals / (n - 2) / sum (x - mean x)^2)
 *
 * @param values  one a repetition in order, any unit; null where it was not measured (its number still counts)
 * @returns  a line through a few repetitions; it says nothing about the cause
 * Sign:    positive = the value rises during the set
 * Missing: null below three measured repetitions: any two are on a line
 * @throws  RangeError where a value is not a finite number
 * Source:  ordinary least squares; checked against Anscombe 1973, Am Stat 27:17
 */
export function withinSetTrend(values: readonly (number | null)[]): Trend | null {
  const points = values.flatMap((y, i) => (y === null ? [] : [{ x: i + 1, y }]));
  requireFinite(points.map(({ y }) => y));
  const count = points.length;
  if (count < 3) return null;
  const meanX = mean(points, ({ x }) => x)!;
  const meanY = mean(points, ({ y }) => y)!;
  const squaresX = sum(points, ({ x }) => (x - meanX) ** 2);
  const slope = sum(points, ({ x, y }) => (x - meanX) * (y - meanY)) / squaresX;
  const squaresOff = sum(points, ({ x, y }) => (y - meanY - slope * (x - meanX)) ** 2);
  const standardError = Math.sqrt(squaresOff / (count - 2) / squaresX);
  const half = studentQuantile95(count - 2) * standardError;
  const [low, high] = [slope - half, slope + half];
  return { count, slope, standardError, low, high, isBeyondError: low > 0 || high < 0 };
}
