import { guideTimes } from '../guideTimes';
import { lines, restLine } from '../lines';
import { enter, lastedMs, newSecondsLeft, say, stepOf, tone, type Turn } from '../turn';
import { beginSet } from './placing';

/** The end of a rest is counted down with as many tones. */
const countedSeconds = 3;

export function followSetDone(turn: Turn): void {
  if (lastedMs(turn) >= guideTimes.setDone) goOn(turn);
}

/** Moves to the rest before the next set, or to the end. */
export function goOn(turn: Turn): void {
  const { state, options } = turn;
  if (state.stepIndex + 1 >= options.steps.length) {
    enter(turn, 'all-done');
    return say(turn, lines.allDone, 'after');
  }
  state.stepIndex++;
  const next = stepOf(turn);
  if (next.restSeconds === 0) return beginSet(turn);
  enter(turn, 'resting');
  say(turn, restLine(next), 'after');
}

export function followResting(turn: Turn): void {
  const left = newSecondsLeft(turn, 1000 * stepOf(turn).restSeconds);
  if (left === null) return;
  if (left === 0) return beginSet(turn);
  if (left <= countedSeconds) tone(turn, 'tick');
  else if (left === 10) say(turn, lines.lastSeconds, 'after');
}
