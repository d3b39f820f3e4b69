import type { MeasuredRepetition, Measurement } from '#core/measurement/measurement';

/** Points of a movement cycle: 0, 1, ... 100 % of the loaded time. */
export const cyclePoints = 101;

/**
 * The knee projection angle over one repetition, on 0 to 100 % of its loaded time.
 *
 * @returns  101 angles, degrees, inward positive; null where the samples round a point were not measured
 */
export function cycleCurve(
  { curves }: Pick<Measurement, 'curves'>,
  { loadedFrom, loadedTo }: Pick<MeasuredRepetition, 'loadedFrom' | 'loadedTo'>,
): (number | null)[] {
  const { values, missing } = curves['knee-angle'];
  return Array.from({ length: cyclePoints }, (_, point) => {
    const at = loadedFrom + ((loadedTo - loadedFrom) * point) / (cyclePoints - 1);
    const [before, after] = [Math.floor(at), Math.ceil(at)];
    if (missing[before] !== 0 || missing[after] !== 0) return null;
    return values[before]! + (at - before) * (values[after]! - values[before]!);
  });
}
