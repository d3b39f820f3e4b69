import { message } from '#words/messages/message';
import { guideTimes } from '../guideTimes';
import { restLine } from '../lines';
import { enter, lastedMs, newSecondsLeft, passesEvery, say, stepOf, tone, type Turn } from '../turn';
import { skipped } from './closing';
import { beginSet } from './placing';

/** The end of a rest is counted down with as many tones. */
const countedSeconds = 3;

export function followSetDone(turn: Turn): void {
  if (lastedMs(turn) >= guideTimes.setDone) goOn(turn);
}

/** Moves to the rest before the next set, which waits for how much the last one hurt; or to the end. */
export function goOn(turn: Turn): void {
  const { state, options } = turn;
  if (state.stepIndex + 1 >= options.steps.length) {
    enter(turn, 'all-done');
    return say(turn, message('say.all-done'), 'after');
  }
  state.stepIndex++;
  const next = stepOf(turn);
  // Nothing hurt in a set that was skipped.
  if (state.results.at(-1)?.cutShort === skipped) state.isPainTold = true;
  if (next.restSeconds === 0 && state.isPainTold) return beginSet(turn);
  enter(turn, 'resting');
  if (next.restSeconds > 0) say(turn, restLine(next), 'after');
  if (!state.isPainTold) say(turn, message('say.ask-pain'), 'after');
}

export function followResting(turn: Turn): void {
  const { isPainTold } = turn.state;
  const restMs = 1000 * stepOf(turn).restSeconds;
  if (lastedMs(turn) >= restMs) {
    if (isPainTold) return beginSet(turn);
    if (passesEvery(turn, guideTimes.painAgain)) say(turn, message('say.pain-first'), 'after');
    return;
  }
  const left = newSecondsLeft(turn, restMs);
  if (left === null || !isPainTold) return;
  if (left <= countedSeconds) tone(turn, 'tick');
  else if (left === 10) say(turn, message('say.last-seconds'), 'after');
}
