import { extent, sum } from 'd3-array';
import { requireFinite } from './requireFinite';

/** A value with its standard error, at a time. */
export interface WeightedPoint {
  x: number;
  y: number;
  sd: number;
}

export interface WeightedSlope {
  count: number;
  /** Of y for 1 of x. */
  slope: number;
  standardError: number;
  /** 95 % confidence interval of the slope. */
  low: number;
  high: number;
  /** From the first x to the last. */
  span: number;
  /** What the line changes by over the span, and the half-width of its 95 % interval. */
  change: number;
  changeBand: number;
  /** Whether the interval excludes 0. */
  isBeyondError: boolean;
}

/**
 * Line through values of known error, by weighted least squares: w = 1 / sd^2, SE = 1 / sqrt(sum w (x - mean x)^2).
 *
 * @param points  in any order; sd above 0
 * @returns  the error comes from the sds alone, not from how far the values are off the line
 * Sign:    positive = y rises with x
 * Missing: null below three points, and where all are at one x: any two points are on a line
 * @throws  RangeError where a number is not finite or an sd is not above 0
 * Source:  weighted least squares with known variances, as in any handbook of statistics
 */
export function weightedSlope(points: readonly WeightedPoint[]): WeightedSlope | null {
  requireFinite(points.flatMap(({ x, y, sd }) => [x, y, sd]));
  const wrong = points.find(({ sd }) => sd <= 0);
  if (wrong) throw new RangeError(`A standard error is above 0, got ${wrong.sd}.`);
  const [first, last] = extent(points, ({ x }) => x);
  if (points.length < 3 || first === undefined || first === last) return null;
  const weighted = points.map(({ x, y, sd }) => ({ x, y, weight: 1 / sd ** 2 }));
  const weights = sum(weighted, ({ weight }) => weight);
  const meanX = sum(weighted, ({ x, weight }) => weight * x) / weights;
  const meanY = sum(weighted, ({ y, weight }) => weight * y) / weights;
  const squares = sum(weighted, ({ x, weight }) => weight * (x - meanX) ** 2);
  const slope = sum(weighted, ({ x, y, weight }) => weight * (x - meanX) * (y - meanY)) / squares;
  const standardError = 1 / Math.sqrt(squares);
  const half = 1.96 * standardError;
  const span = last - first;
  return {
    count: points.length,
    slope,
    standardError,
    low: slope - half,
    high: slope + half,
    span,
    change: slope * span,
    changeBand: half * span,
    isBeyondError: Math.abs(slope) > half,
  };
}
