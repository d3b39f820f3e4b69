import type { MeasuredRepetition, Measurement } from '#core/measurement/measurement';
import type { MeasureId } from '#core/measures/measures';

/** Points of a movement cycle: 0, 1, ... 100 % of the loaded time. */
export const cyclePoints = 101;

/**
 * A measure over one repetition, on 0 to 100 % of its loaded time.
 *
 * @returns  101 values in the measure's own unit and sign; null where the samples around a point were not measured
 */
export function cycleCurve(
  { curves }: Pick<Measurement, 'curves'>,
  { loadedFrom, loadedTo }: Pick<MeasuredRepetition, 'loadedFrom' | 'loadedTo'>,
  measure: MeasureId = 'knee-angle',
): (number | null)[] {
  const { values, missing } = curves[measure];
  return Array.from({ length: cyclePoints }, (_, point) => {
    const at = loadedFrom + ((loadedTo - loadedFrom) * point) / (cyclePoints - 1);
    const [before, after] = [Math.floor(at), Math.ceil(at)];
    if (missing[before] !== 0 || missing[after] !== 0) return null;
    return values[before]! + (at - before) * (values[after]! - values[before]!);
  });
}
