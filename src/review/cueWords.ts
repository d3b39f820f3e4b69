import { cueFor } from '../library/cueFor';
import type { Measurement } from '../measurement/measurement';
import { findTask } from '../protocol/tasks';
import type { Direction } from '../scoring/judge';
import { phaseAt } from './phaseAt';

/** What is said of a repetition that went as it should. */
const modelWords = 'Just like this.';

/**
 * One cue in few words for a repetition.
 *
 * @param direction  the way the knee went; null for a model
 * @param timeMs  of its worst moment
 */
export function cueWords(
  { repetitions, setup }: Pick<Measurement, 'repetitions' | 'setup'>,
  index: number,
  direction: Direction | null,
  timeMs: number,
): string {
  const repetition = repetitions[index];
  if (direction === null || repetition === undefined) return modelWords;
  const phase = phaseAt(repetition.events, findTask(setup.task).shape, timeMs) ?? 'going';
  return cueFor(setup.task, direction, phase) ?? 'Knee over the middle of the foot.';
}
