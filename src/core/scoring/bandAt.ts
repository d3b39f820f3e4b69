import type { Measurement } from '../measurement/measurement';
import type { LimitEnd } from '../measures/limitEnd';
import type { MeasureId } from '../measures/measures';

/**
 * Error band of a measure at a sample: that of the repetition which it belongs to, outside all repetitions the widest
 * of theirs.
 *
 * @param end  whether the least or the most of a repetition lends its band
 * @returns  half-width, in the measure's own unit; null where no repetition has a band
 */
export function bandAt(
  { repetitions }: Pick<Measurement, 'repetitions'>,
  sample: number,
  end: LimitEnd,
  measure: MeasureId = 'knee-angle',
): number | null {
  const own = repetitions.filter(({ loadedFrom, loadedTo }) => sample >= loadedFrom && sample <= loadedTo);
  const bands = (own.length > 0 ? own : repetitions).flatMap(({ ranges }) => {
    const { min, max } = ranges[measure];
    return (end === 'most' ? max : min)?.band ?? [];
  });
  return bands.length === 0 ? null : Math.max(...bands);
}
