import type { Measurement } from '../measurement/measurement';
import type { Direction } from './deciding';

/**
 * Error band of the knee angle at a sample: that of the repetition which it belongs to, outside all repetitions the
 * widest of theirs.
 *
 * @returns  half-width, degrees; null where no repetition has a band
 */
export function bandAt(
  { repetitions }: Pick<Measurement, 'repetitions'>,
  sample: number,
  direction: Direction,
): number | null {
  const own = repetitions.filter(({ loadedFrom, loadedTo }) => sample >= loadedFrom && sample <= loadedTo);
  const bands = (own.length > 0 ? own : repetitions).flatMap(({ ranges }) => {
    const { min, max } = ranges['knee-angle'];
    return (direction === 'inward' ? max : min)?.band ?? [];
  });
  return bands.length === 0 ? null : Math.max(...bands);
}
