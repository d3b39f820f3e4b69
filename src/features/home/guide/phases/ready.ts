import { startLine } from '#words/exerciseWords';
import { guideTimes } from '../guideTimes';
import { doseLine, numberLine } from '../lines';
import { resumeRecording } from '../recording';
import {
  enter,
  isSilent,
  lastedMs,
  newSecondsLeft,
  passesEvery,
  preparationOf,
  say,
  stepOf,
  tone,
  type Turn,
} from '../turn';
import { enterWorking } from './working';

/** Into the start position. */
export function enterReady(turn: Turn): void {
  enter(turn, 'ready');
  resumeRecording(turn);
  say(turn, readyLine(turn), 'after');
}

function readyLine(turn: Turn): string {
  const line = startLineOf(turn);
  return turn.state.isResuming ? line : `${line} ${doseLine(stepOf(turn))}`;
}

function startLineOf(turn: Turn): string {
  const { item, side } = stepOf(turn);
  return startLine(item.task, side);
}

export function followReady(turn: Turn): void {
  if (isReady(turn)) return enterCountdown(turn);
  if (passesEvery(turn, guideTimes.hintAgain)) say(turn, startLineOf(turn), 'after');
}

/** Waits until all is said, and for the start position where it can be inferred; otherwise, only for a limited time. */
function isReady(turn: Turn): boolean {
  const { start } = preparationOf(turn);
  const { posture, postureChangeMs, nowMs } = turn.state;
  const lasted = lastedMs(turn);
  if (!isSilent(turn, guideTimes.voiceAtMost)) return false;
  if (start === 'as-shown') return lasted >= guideTimes.readyHold;
  if (posture === null) return lasted >= guideTimes.readyUnseen;
  const isSteady = posture === start && nowMs - postureChangeMs >= guideTimes.postureSteady;
  return lasted >= (isSteady ? guideTimes.readyAtLeast : guideTimes.readyAtMost);
}

function enterCountdown(turn: Turn): void {
  enter(turn, 'countdown');
  tellSecond(turn, guideTimes.countdown / 1000);
}

export function followCountdown(turn: Turn): void {
  const left = newSecondsLeft(turn, guideTimes.countdown);
  if (left === 0) enterWorking(turn);
  else if (left !== null) tellSecond(turn, left);
}

function tellSecond(turn: Turn, left: number): void {
  tone(turn, 'tick');
  say(turn, numberLine(left), 'next', `${left}`);
}
