import { message } from '#words/messages/message';
import { startCounting, stopCounting } from '../counting';
import type { GuideState } from '../guideState';
import { guideTimes } from '../guideTimes';
import { stepLine } from '../lines';
import { discardRecording, startRecording } from '../recording';
import { enter, isSilent, lastedMs, needsCamera, preparationOf, say, stepOf, type Turn } from '../turn';
import { enterReady } from './ready';
import { sayRule } from './rule';

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
    setbacks: 0,
    accepted: 'nothing',
    hints: {},
    isPainTold: false,
  });
  state.startAnywayMs = null;
  say(turn, stepLine(stepOf(turn)), 'after');
  if (needsCamera(turn)) return enterPlacing(turn);
  sayRule(turn, 'after');
  enterReady(turn);
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
  const { state } = turn;
  const { placingLine: line, placingSaid: said, placingCost: cost, nowMs } = state;
  if (isPlaced(turn)) {
    if (isSilent(turn, guideTimes.voiceAtMost) && !sayRule(turn, 'next')) leavePlacing(turn);
    return;
  }
  if (line === null || state.isPlaced) return;
  const isSame = line === said?.line;
  if (said !== null && nowMs - said.atMs < (isSame ? guideTimes.hintAgain : guideTimes.hintSoonest)) return;
  const times = state.hints[line] ?? 0;
  const isInVain = times >= guideTimes.hintTimes && cost !== 'everything' && state.isPresent;
  if (isInVain) {
    state.accepted = cost;
    return;
  }
  state.placingSaid = { line, atMs: nowMs };
  state.hints = { ...state.hints, [line]: times + 1 };
  say(turn, line, said === null ? 'after' : 'next');
}

function isPlaced(turn: Turn): boolean {
  const { state } = turn;
  const { nowMs, isPresent, startAnywayMs, placedChangeMs } = state;
  if (!isPresent) return false;
  if (state.accepted !== 'nothing') return lastedMs(turn) >= guideTimes.walkBack;
  if (startAnywayMs !== null) return nowMs - startAnywayMs >= guideTimes.walkBack;
  return state.isPlaced && nowMs - placedChangeMs >= guideTimes.placedSteady;
}

function leavePlacing(turn: Turn): void {
  const { state } = turn;
  if (state.isResuming && state.recording === 'paused') {
    say(turn, message('say.placed-again'), 'next');
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
  say(turn, [acceptedLine(turn) ?? message('say.good'), message('say.bends')].join(' '), 'next');
}

export function followBends(turn: Turn): void {
  if (hasLeft(turn)) return backToPlacing(turn);
  if (turn.state.bends < 2 && lastedMs(turn) < guideTimes.bendsAtMost) return;
  stopCounting(turn);
  enterStanding(turn);
}

function enterStanding(turn: Turn): void {
  enter(turn, 'standing');
  Object.assign(turn.state, { standLine: null, isStandLineSaid: false });
  startRecording(turn);
  say(turn, [acceptedLine(turn) ?? message('say.good'), message('say.standing')].join(' '), 'next');
}

/** That it goes on although something is not as it should be; null where nothing is. */
function acceptedLine({ state }: Turn): string | null {
  if (state.accepted === 'nothing') return null;
  return state.accepted === 'exactness' ? message('say.less-exact') : message('say.maybe-unmeasured');
}

export function followStanding(turn: Turn): void {
  const { state } = turn;
  if (hasLeft(turn)) return backToPlacing(turn);
  if (isMisplaced(state)) {
    state.setbacks++;
    // Placing says what is not as it should be.
    if (state.setbacks <= guideTimes.setbacks) return backToPlacing(turn);
    state.accepted = state.placingCost;
  }
  const lasted = lastedMs(turn);
  if (lasted < guideTimes.standing || !isSilent(turn, guideTimes.voiceAtMost)) return;
  const { standLine, isStandLineSaid } = state;
  const isAsked = standLine !== null && !isAccepted(state);
  if (!isAsked || lasted >= guideTimes.standingAtMost) {
    if (isAsked || state.setbacks > guideTimes.setbacks)
      say(turn, acceptedLine(turn) ?? message('say.less-exact'), 'next');
    return enterReady(turn);
  }
  if (isStandLineSaid) return;
  state.isStandLineSaid = true;
  say(turn, standLine, 'next');
}

/** Whether something has long been so wrong that the set could not be measured; what only costs exactness can wait. */
function isMisplaced(state: GuideState): boolean {
  if (state.isPlaced || isAccepted(state) || ['nothing', 'exactness'].includes(state.placingCost))
    return false;
  return state.nowMs - state.placedChangeMs >= guideTimes.misplaced;
}

/** Whether the set begins whatever the checks say. */
function isAccepted({ startAnywayMs, accepted }: GuideState): boolean {
  return startAnywayMs !== null || accepted !== 'nothing';
}

/** Of a quiet stand nothing is kept: the person, or the camera, may move before the next one. */
function backToPlacing(turn: Turn): void {
  stopCounting(turn);
  discardRecording(turn);
  if (hasLeft(turn)) say(turn, message('say.stay-placed'), 'next');
  enterPlacing(turn);
}

/** Whether the person has left, and is not only unseen because no pictures are looked at. */
function hasLeft(turn: Turn): boolean {
  return isGone(turn) && turn.state.unseen === null;
}

/** Whether nobody has been in the picture for a while. */
export function isGone({ state }: Turn): boolean {
  return !state.isPresent && state.nowMs - state.presentChangeMs >= guideTimes.gone;
}
