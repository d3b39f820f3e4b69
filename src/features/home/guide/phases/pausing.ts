import { message } from '#words/messages/message';
import { stopCounting } from '../counting';
import type { GuidePhase, PauseReason } from '../guideState';
import { guideTimes } from '../guideTimes';
import { pauseLine } from '../lines';
import { discardRecording, pauseRecording } from '../recording';
import { enter, hasWorked, isSilent, lastedMs, needsCamera, say, tone, type Turn } from '../turn';
import { unwanted } from '../unwanted';
import { goOn } from './between';
import { closePart, endSet } from './closing';
import { enterPlacing, isGone } from './placing';
import { enterReady } from './ready';

const begun: readonly GuidePhase[] = ['ready', 'countdown', 'working'];
/** Pauses that end once somebody is seen again. */
const endsByItself: ReadonlySet<PauseReason> = new Set([
  'left-picture',
  'no-pictures',
  'not-followed',
  'turned',
]);
const beforeStart: readonly GuidePhase[] = ['placing', 'bends', 'standing'];

/** Pauses where the page is hidden, the camera has ended or the person has left, if that matters in this phase. */
export function pauseWhereNeeded(turn: Turn): boolean {
  const { state } = turn;
  const inSet = [...beforeStart, ...begun, 'finishing'].includes(state.phase);
  const reason = inSet ? hindrance(turn) : null;
  if (reason === null) return false;
  // All repetitions are done: there is nothing to come back for.
  if (state.phase === 'finishing') endSet(turn, null);
  else pause(turn, reason);
  return true;
}

function hindrance(turn: Turn): PauseReason | null {
  const { isVisible, cameraWorks, phase } = turn.state;
  if (!isVisible) return 'page-hidden';
  if (!needsCamera(turn)) return null;
  if (!cameraWorks) return 'camera-ended';
  return begun.includes(phase) && isGone(turn) ? absence(turn) : null;
}

function absence({ state }: Turn): PauseReason {
  return state.unseen ?? 'left-picture';
}

export function pause(turn: Turn, reason: PauseReason): void {
  const { state } = turn;
  const from = state.phase;
  state.pausedAfterMs = lastedMs(turn);
  stopCounting(turn);
  if (reason === 'camera-ended') endPart(turn, unwanted.cameraStopped);
  else if (beforeStart.includes(from) && !hasWorked(turn)) discardRecording(turn);
  else pauseRecording(turn);
  enter(turn, 'paused');
  state.pauseReason = reason;
  state.pausedFrom = from;
  tone(turn, 'pause');
  say(turn, pauseLine(reason), 'now');
}

/** What the camera saw until then is saved; the rest of the set becomes a separate part. */
function endPart(turn: Turn, why: string): void {
  if (hasWorked(turn)) closePart(turn, why);
  else discardRecording(turn);
}

export function followPaused(turn: Turn): void {
  const { state } = turn;
  if (!state.cameraWorks && state.recording !== 'off') endPart(turn, unwanted.cameraStopped);
  if (state.pauseReason === null || !endsByItself.has(state.pauseReason)) return;
  if (!state.isPresent) state.pauseReason = absence(turn);
  const reason = hindrance(turn);
  if (reason !== null) {
    state.pauseReason = reason;
    return say(turn, pauseLine(reason), 'now');
  }
  // Anyone who comes back into the picture can't press anything, and need not.
  const isBack = state.isPresent && state.nowMs - state.presentChangeMs >= guideTimes.back;
  if (isBack && isSilent(turn, guideTimes.voiceAtMost)) {
    state.isResuming = true;
    say(turn, message('say.placed-again'), 'next');
    enterReady(turn);
  }
}

/** Continues after a press: the person has to walk back into place first. */
export function resume(turn: Turn): void {
  const { state } = turn;
  const from = state.pausedFrom;
  if (from === 'resting') {
    enter(turn, 'resting');
    state.sinceMs -= state.pausedAfterMs;
    return;
  }
  if (from === 'set-done') return goOn(turn);
  if (!state.isVisible) return;
  if (!needsCamera(turn)) {
    state.isResuming = hasWorked(turn);
    return enterReady(turn);
  }
  if (!state.cameraWorks) return say(turn, message('say.camera-missing'), 'now');
  // A recording keeps its size: what follows is another one.
  if (state.unseen === 'turned') endPart(turn, unwanted.pictureTurned);
  state.isResuming = state.isResuming || (from !== null && begun.includes(from));
  state.startAnywayMs = null;
  enterPlacing(turn);
}
