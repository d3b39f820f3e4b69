import { allowedPresses } from './allowedPresses';
import type { GuideEffect } from './guideEffect';
import type { GuideEvent, GuidePress } from './guideEvent';
import { stateAtRest, type GuideOptions, type GuidePhase, type GuideState } from './guideState';
import { followResting, followSetDone } from './phases/between';
import { endSet, followFinishing, reasonForEnd } from './phases/closing';
import { followPaused, pause, pauseWhereNeeded, resume } from './phases/pausing';
import { beginSet, followBends, followPlacing, followStanding } from './phases/placing';
import { followCountdown, followReady } from './phases/ready';
import { askWhy, stopAll } from './phases/stopping';
import { followWorking, hearRepetition, hearVerdict, missCount } from './phases/working';
import type { Turn } from './turn';

/** The state of the guide after an event, and the effects that it asks for, in order. */
export interface GuideStep {
  state: GuideState;
  effects: readonly GuideEffect[];
}

/**
 * The initial state of the guide through all sets.
 *
 * @param nowMs  any clock that only goes forward, the same as in the ticks
 * @throws RangeError  where there are no sets
 */
export function startGuide(options: GuideOptions, nowMs: number): GuideStep {
  if (options.steps.length === 0) throw new RangeError('a guide needs at least one set');
  const times = { nowMs, placedChangeMs: nowMs, presentChangeMs: nowMs, postureChangeMs: nowMs };
  const turn = turnFrom(options, { ...stateAtRest, ...times });
  beginSet(turn);
  return turn;
}

/** Applies one event; the given state is not changed. Never throws, whatever the order of events. */
export function advanceGuide(options: GuideOptions, state: GuideState, event: GuideEvent): GuideStep {
  const turn = turnFrom(options, { ...state });
  takeIn(turn, event);
  if (!pauseWhereNeeded(turn)) follow[turn.state.phase](turn);
  return turn;
}

function turnFrom(options: GuideOptions, state: GuideState): Turn {
  return { options, state, effects: [], beforeMs: state.nowMs };
}

const nothing = () => undefined;

const follow: Record<GuidePhase, (turn: Turn) => void> = {
  placing: followPlacing,
  bends: followBends,
  standing: followStanding,
  ready: followReady,
  countdown: followCountdown,
  working: followWorking,
  finishing: followFinishing,
  paused: followPaused,
  'set-done': followSetDone,
  resting: followResting,
  'all-done': nothing,
  stopped: nothing,
};

function takeIn(turn: Turn, event: GuideEvent): void {
  const { state } = turn;
  const { nowMs, phase } = state;
  switch (event.kind) {
    case 'tick':
      if (event.nowMs > nowMs && Number.isFinite(event.nowMs)) state.nowMs = event.nowMs;
      return;
    case 'placing':
      if (event.isGood !== state.isPlaced) state.placedChangeMs = nowMs;
      state.isPlaced = event.isGood;
      state.placingLine = event.line;
      state.placingCost = event.cost;
      return;
    case 'person':
      if (event.isPresent !== state.isPresent) state.presentChangeMs = nowMs;
      state.isPresent = event.isPresent;
      state.unseen = event.unseen ?? null;
      return;
    case 'posture':
      if (event.posture !== state.posture) state.postureChangeMs = nowMs;
      state.posture = event.posture;
      return;
    case 'stand':
      state.standLine = event.line;
      return;
    case 'voice':
      state.isSpeaking = event.isSpeaking;
      return;
    case 'counting':
      if (!event.works && state.canCount && phase === 'working' && state.isCounting) missCount(turn);
      state.canCount = event.works;
      return;
    case 'camera':
      state.cameraWorks = event.works;
      return;
    case 'page':
      state.isVisible = event.isVisible;
      return;
    case 'repetition':
      if (phase === 'working') hearRepetition(turn, event.heard);
      else if (phase === 'bends') state.bends++;
      return;
    case 'judged':
      if (phase === 'working' || phase === 'finishing') hearVerdict(turn, event.heard);
      return;
    case 'pain-told':
      state.isPainTold = true;
      return;
    case 'press':
      if (allowedPresses(state).includes(event.press)) press[event.press](turn);
  }
}

const press: Record<GuidePress, (turn: Turn) => void> = {
  pause: (turn) => pause(turn, 'button'),
  resume,
  'start-anyway': ({ state }) => {
    state.startAnywayMs = state.nowMs;
  },
  'skip-rest': beginSet,
  'end-set': (turn) => endSet(turn, reasonForEnd(turn)),
  stop: askWhy,
  'stop-pain': (turn) => stopAll(turn, 'pain'),
  'stop-gave-way': (turn) => stopAll(turn, 'gave-way'),
  'stop-locked': (turn) => stopAll(turn, 'locked'),
  'stop-dizzy': (turn) => stopAll(turn, 'dizzy'),
  'stop-other': (turn) => stopAll(turn, 'other'),
  end: (turn) => stopAll(turn, 'ended'),
};
