import { findTask } from '#core/exercises/exercises';
import { cueFor } from '#core/exercises/library/cueFor';
import type { Measurement } from '#core/measurement/measurement';
import { findMeasure } from '#core/measures/measures';
import { decidingMeasure, decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { verdictSide } from '#core/scoring/verdict';
import { measureCue } from '#words/measureWords';
import { phaseAt } from './phaseAt';

/** What is said of a repetition that went well. */
const modelWords = 'Just like this.';
/** Where the library has nothing better, or nothing was measured. */
const usualWords = 'Knee over the middle of the foot.';

/**
 * One short cue for a repetition.
 *
 * @param judgement  null where it is to be shown as a model
 */
export function cueWords(
  { repetitions, setup }: Pick<Measurement, 'repetitions' | 'setup'>,
  index: number,
  judgement: Judgement | null,
): string {
  if (judgement === null || verdictSide(judgement.verdict) === 'in') return modelWords;
  const repetition = repetitions[index];
  const { measure, end, extreme } = decidingMeasure(judgement);
  const { isAlwaysLimited } = findMeasure(measure);
  if (extreme === null) return usualWords;
  if (!isAlwaysLimited) return measureCue(measure, end);
  const way = decidingWay(judgement);
  if (way === null || repetition === undefined) return usualWords;
  const phase = phaseAt(repetition.events, findTask(setup.task).shape, extreme.timeMs) ?? 'going';
  return cueFor(setup.task, way, phase) ?? usualWords;
}
