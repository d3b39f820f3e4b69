import { curveReason, type Curve, type MissingReason } from '#core/measurement/curve';

export interface ReducedCurve {
  /** Runs of measured samples, each a list of sample indices in order; the curve is broken between runs. */
  runs: number[][];
  /** Runs of missing samples (both ends included) with the reason of their first. */
  gaps: { from: number; to: number; reason: MissingReason }[];
}

/**
 * Picks the samples of a curve that are worth drawing: all of them if there are few, otherwise the least and
 * the greatest in each column of pixels, so that no peak is lost.
 *
 * @param columns  width of the drawing, px, above 0
 */
export function reduceCurve(curve: Curve, columns: number): ReducedCurve {
  const samples = curve.values.length;
  const perColumn = Math.max(1, Math.floor(samples / Math.max(1, columns)));
  const runs: number[][] = [];
  const gaps: ReducedCurve['gaps'] = [];
  let from = 0;
  while (from < samples) {
    const missing = curve.missing[from]!;
    let to = from;
    while (to + 1 < samples && (curve.missing[to + 1] !== 0) === (missing !== 0)) to++;
    if (missing === 0)
      runs.push(perColumn <= 2 ? allOf(from, to) : extremesOf(curve.values, from, to, perColumn));
    else gaps.push({ from, to, reason: curveReason(curve, from)! });
    from = to + 1;
  }
  return { runs, gaps };
}

function allOf(from: number, to: number): number[] {
  return Array.from({ length: to - from + 1 }, (_, i) => from + i);
}

function extremesOf(values: Float64Array, from: number, to: number, perColumn: number): number[] {
  const kept = [from];
  for (let start = from; start <= to; start += perColumn) {
    let [least, greatest] = [start, start];
    for (let i = start; i < Math.min(start + perColumn, to + 1); i++) {
      if (values[i]! < values[least]!) least = i;
      if (values[i]! > values[greatest]!) greatest = i;
    }
    for (const sample of [Math.min(least, greatest), Math.max(least, greatest)]) {
      if (sample > kept.at(-1)!) kept.push(sample);
    }
  }
  if (to > kept.at(-1)!) kept.push(to);
  return kept;
}
