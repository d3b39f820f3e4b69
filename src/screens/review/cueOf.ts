import type { Measurement } from '../../measurement/measurement';
import { cueWords } from '../../review/cueWords';
import type { Judgement } from '../../scoring/judge';
import type { SessionReview } from '../../session/reviewSchema';
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
): SessionReview['cues'][number] {
  return { atMs: middleMs(measurement, index), text: cueWords(measurement, index, judgement) };
}
