import type { LimitEnd } from '#core/measures/limitEnd';
import type { MeasureId } from '#core/measures/measures';
import { message } from './messages/message';

/** What to say when a measure leaves its limit: what to do, in few words. Common practice, no source. */
export function measureCue(id: MeasureId, end: LimitEnd): string {
  return message(`cue.${id}.${end}`);
}

/** The same in one or two short words, which are read from three metres. */
export function shortCue(id: MeasureId, end: LimitEnd): string {
  return message(`short-cue.${id}.${end}`);
}

/**
 * What was seen where it left its limit, as a sentence for the person who did it.
 *
 * @param which  the repetitions, as they follow 'in': 'the third repetition', '4 of 6 repetitions'
 */
export function habitSentence(id: MeasureId, end: LimitEnd, which: string): string {
  return message(`habit.${id}.${end}`, { which });
}
