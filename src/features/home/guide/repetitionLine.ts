import type { FeedbackMode } from '#core/protocol/feedback';
import { verdictSide } from '#core/scoring/verdict';
import { capitalised } from '#words/capitalised';
import type { HeardVerdict } from './guideEvent';
import { numberWord } from './numberWord';

/** What is heard and read when a repetition was counted. */
export interface CountLine {
  line: string;
  caption: string;
  tone: 'tick' | 'outside';
}

/** Counted down in words at the end of a set. */
const countedDown = 3;

/**
 * The count, the feedback that the plan asks for, and how many of the last three are left.
 *
 * @param count  of this repetition, from 1
 */
export function repetitionLine(
  count: number,
  prescribed: number,
  heard: HeardVerdict | null,
  feedback: FeedbackMode,
  outsideSound: boolean,
): CountLine {
  const told = feedbackLine(heard, feedback);
  const left = leftLine(prescribed - count);
  const rest = [told, left].filter((part) => part !== null);
  return {
    line: [`${capitalised(numberWord(count))}.`, ...rest].join(' '),
    caption: [`${count} of ${prescribed}.`, ...rest].join(' '),
    tone: isOutside(heard, feedback, outsideSound) ? 'outside' : 'tick',
  };
}

function leftLine(left: number): string | null {
  if (left === 0) return 'That was the last one.';
  if (left === 1) return 'One more.';
  return left <= countedDown ? `${capitalised(numberWord(left))} more.` : null;
}

/** Whether a repetition has the sound that signals leaving the limits. */
export function isOutside(
  heard: HeardVerdict | null,
  feedback: FeedbackMode,
  outsideSound: boolean,
): boolean {
  const isTold = feedback === 'every-repetition' || feedback === 'only-outside';
  return isTold && outsideSound && heard !== null && verdictSide(heard.verdict) === 'out';
}

/** Spoken feedback on a repetition; null where the plan asks for none, or nothing is known. */
export function feedbackLine(heard: HeardVerdict | null, feedback: FeedbackMode): string | null {
  if (heard === null || feedback === 'after-the-set' || feedback === 'none') return null;
  const side = verdictSide(heard.verdict);
  if (side === 'out') {
    if (heard.cue !== null) return heard.cue;
    return heard.direction === 'inward'
      ? 'Let the knee go out a little, over the foot.'
      : 'Let the knee come in a little, over the foot.';
  }
  if (feedback === 'only-outside') return null;
  return side === 'in' ? 'Knee over the foot, good.' : null;
}
