import type { Measurement } from '#core/measurement/measurement';
import type { Judgement } from '#core/scoring/judge';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import { cueWords } from '../rules/cueWords';
import { middleMs } from './correctionChoices';

/**
 * A repetition as a cue, with the library's words for what went wrong in it.
 *
 * @param judgement  null where it is to be shown as a model
 */
export function cueOf(
  measurement: Measurement,
  index: number,
  judgement: Judgement | null,
): RecordingReview['cues'][number] {
  return { atMs: middleMs(measurement, index), text: cueWords(measurement, index, judgement) };
}
