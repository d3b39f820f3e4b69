import { startCounting, stopCounting } from '../counting';
import { guideTimes } from '../guideTimes';
import { lines, stepLine } from '../lines';
import { discardRecording, startRecording } from '../recording';
import { enter, lastedMs, needsCamera, preparationOf, say, stepOf, type Turn } from '../turn';
import { enterReady } from './ready';

/** Begins the current set. */
export function beginSet(turn: Turn): void {
  const { state } = turn;
  Object.assign(state, {
    isResuming: false,
    bends: 0,
    count: 0,
    countBefore: 0,
    hasMissed: false,
    workedMs: 0,
  });
  state.startAnywayMs = null;
  say(turn, stepLine(stepOf(turn)), 'after');
  if (needsCamera(turn)) enterPlacing(turn);
  else enterReady(turn);
}

export function enterPlacing(turn: Turn): void {
  const { state } = turn;
  enter(turn, 'placing');
  state.placingSaid = null;
  // Anyone who was well placed before may have walked to the device since.
  state.isPlaced = false;
  state.placedChangeMs = state.nowMs;
}

export function followPlacing(turn: Turn): void {
  if (isPlaced(turn)) return leavePlacing(turn);
  const { state } = turn;
  const { placingLine: line, placingSaid: said, nowMs } = state;
  if (line === null || state.isPlaced) return;
  const waitMs = line === said?.line ? guideTimes.hintAgain : guideTimes.hintSoonest;
  if (said !== null && nowMs - said.atMs < waitMs) return;
  state.placingSaid = { line, atMs: nowMs };
  say(turn, line, said === null ? 'after' : 'now');
}

function isPlaced({ state }: Turn): boolean {
  const { nowMs, isPresent, startAnywayMs, placedChangeMs } = state;
  if (!isPresent) return false;
  if (startAnywayMs !== null) return nowMs - startAnywayMs >= guideTimes.walkBack;
  return state.isPlaced && nowMs - placedChangeMs >= guideTimes.placedSteady;
}

function leavePlacing(turn: Turn): void {
  const { state } = turn;
  if (state.isResuming && state.recording === 'paused') {
    say(turn, lines.placedAgain, 'now');
    return enterReady(turn);
  }
  if (preparationOf(turn).easyBends && !state.isResuming) enterBends(turn);
  else enterStanding(turn);
}

/** Not recorded, since the whole recording is searched for repetitions. */
function enterBends(turn: Turn): void {
  enter(turn, 'bends');
  turn.state.bends = 0;
  startCounting(turn, 'two-legged-bend');
  say(turn, lines.bends, 'now');
}

export function followBends(turn: Turn): void {
  if (isGone(turn)) return backToPlacing(turn);
  if (turn.state.bends < 2 && lastedMs(turn) < guideTimes.bendsAtMost) return;
  stopCounting(turn);
  enterStanding(turn);
}

function enterStanding(turn: Turn): void {
  enter(turn, 'standing');
  turn.state.standLine = null;
  startRecording(turn);
  say(turn, lines.standing, 'now');
}

export function followStanding(turn: Turn): void {
  const { isPlaced: isWell, placedChangeMs, nowMs, startAnywayMs, standLine } = turn.state;
  const isMisplaced = !isWell && startAnywayMs === null && nowMs - placedChangeMs >= guideTimes.misplaced;
  if (isMisplaced || isGone(turn)) return backToPlacing(turn);
  const lasted = lastedMs(turn);
  const before = lasted - (nowMs - turn.beforeMs);
  const isAsked = standLine !== null && startAnywayMs === null;
  if (lasted >= (isAsked ? guideTimes.standingAtMost : guideTimes.standing)) return enterReady(turn);
  if (isAsked && lasted >= guideTimes.standing && before < guideTimes.standing) say(turn, standLine, 'now');
}

function backToPlacing(turn: Turn): void {
  stopCounting(turn);
  discardRecording(turn);
  say(turn, lines.stayPlaced, 'now');
  enterPlacing(turn);
}

/** Whether nobody has been in the picture for a while. */
export function isGone({ state }: Turn): boolean {
  return !state.isPresent && state.nowMs - state.presentChangeMs >= guideTimes.gone;
}
