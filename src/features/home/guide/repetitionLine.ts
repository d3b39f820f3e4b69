import type { FeedbackMode } from '#core/protocol/feedback';
import { verdictSide } from '#core/scoring/verdict';
import { capitalised } from '#words/capitalised';
import { message } from '#words/messages/message';
import type { HeardVerdict } from './guideEvent';
import { numberLine } from './lines';
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
    line: [numberLine(count), ...rest].join(' '),
    caption: [message('caption.count', { count, of: prescribed }), ...rest].join(' '),
    tone: isOutside(heard, feedback, outsideSound) ? 'outside' : 'tick',
  };
}

function leftLine(left: number): string | null {
  if (left > countedDown) return null;
  return message('say.more', { left, leftSaid: capitalised(numberWord(left, 'feminine')) });
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
    return message(heard.direction === 'inward' ? 'say.guide-out' : 'say.guide-in');
  }
  if (feedback === 'only-outside') return null;
  return side === 'in' ? message('say.over-foot') : null;
}
