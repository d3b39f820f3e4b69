import { spreadBetween } from '#core/statistics/spreadBetween';

/** One point of a set's typical repetition, in the measure's own unit and sign. */
export interface MeanPoint {
  pct: number;
  mean: number;
  /** Sample standard deviation between repetitions. */
  sd: number;
  /** Repetitions that were measured there. */
  count: number;
}

/** Fewest repetitions for a typical one. */
export const fewestCurves = 3;

/**
 * The typical repetition of a set: mean and spread over the movement.
 *
 * @param curves  as cycleCurve gives them
 * @returns  0 to 100 %; null at a point where fewer than three repetitions were measured
 */
export function meanCurve(curves: readonly (readonly (number | null)[])[]): (MeanPoint | null)[] {
  const points = curves[0]?.length ?? 0;
  return Array.from({ length: points }, (_, point) => {
    const values = curves.flatMap((curve) => curve[point] ?? []);
    const spread = values.length < fewestCurves ? null : spreadBetween(values);
    if (spread === null) return null;
    return { pct: (100 * point) / (points - 1), mean: spread.mean, sd: spread.sd, count: spread.count };
  });
}
