import { message } from '#words/messages/message';
import { stopCounting } from '../counting';
import type { SetResult } from '../guideState';
import { guideTimes } from '../guideTimes';
import { holdAt } from '../holdAt';
import { discardRecording, stopRecording } from '../recording';
import { enter, hasWorked, isSilent, lastedMs, say, stepOf, tone, type Turn } from '../turn';

export function enterFinishing(turn: Turn): void {
  stopCounting(turn);
  enter(turn, 'finishing');
}

/** The recording ends, then what is said of the last repetition, then the set. */
export function followFinishing(turn: Turn): void {
  if (lastedMs(turn) < guideTimes.finishing) return;
  if (turn.state.recording !== 'off') closePart(turn, null);
  if (isSilent(turn, guideTimes.finishingAtMost)) endSet(turn, null);
}

/** Why a set of which nothing was done is cut short. */
export const skipped = 'skipped';

/** Closes the set and says so. */
export function endSet(turn: Turn, cutShort: string | null): void {
  closePart(turn, cutShort);
  enter(turn, 'set-done');
  tone(turn, 'end');
  say(turn, cutShort === null ? message('say.set-done') : message('say.set-ended'), 'after');
}

/** Why a set that is ended by hand was cut short; null where it was not. */
export function reasonForEnd(turn: Turn): string | null {
  if (!hasWorked(turn)) return skipped;
  return turn.state.hasMissed ? null : 'ended early';
}

/** Stores what was done since the set, or its last part, began, and ends the recording. */
export function closePart(turn: Turn, cutShort: string | null): void {
  const { state } = turn;
  stopCounting(turn);
  const isNoted = state.results.some(({ stepIndex }) => stepIndex === state.stepIndex);
  const isWorth = hasWorked(turn);
  if (isWorth || !isNoted) state.results = [...state.results, resultOf(turn, cutShort)];
  if (isWorth) stopRecording(turn, state.results.length - 1);
  else discardRecording(turn);
  state.countBefore = state.count;
  state.workedMs = 0;
}

function resultOf(turn: Turn, cutShort: string | null): SetResult {
  const { state } = turn;
  const { item, itemIndex, side, number } = stepOf(turn);
  const isRecorded = hasWorked(turn) && state.recording !== 'off';
  const common = { stepIndex: state.stepIndex, itemIndex, side, number, cutShort, isRecorded };
  if (item.kind === 'hold') {
    const { heldMs } = holdAt(item, state.workedMs);
    return { ...common, task: item.task, prescribed: null, counted: null, heldMs };
  }
  const counted = state.hasMissed ? null : state.count - state.countBefore;
  const prescribed = item.repetitions - state.countBefore;
  return { ...common, task: item.task, prescribed, counted, heldMs: null };
}
