import type { Measurement } from '../../measurement/measurement';
import { cueWords } from '../../review/cueWords';
import type { Judgement } from '../../scoring/judge';
import type { SessionReview } from '../../session/reviewSchema';
import { middleMs } from './correctionChoices';

/** A repetition as a cue, with the library's words for what went wrong in it. */
export function cueOf(
  measurement: Measurement,
  judgements: readonly Judgement[],
  index: number,
): SessionReview['cues'][number] {
  const { worst = null, verdict, direction = null } = judgements[index] ?? {};
  const atMs = middleMs(measurement, index);
  const text = cueWords(measurement, index, verdict === 'in-line' ? null : direction, worst?.timeMs ?? atMs);
  return { atMs, text };
}
