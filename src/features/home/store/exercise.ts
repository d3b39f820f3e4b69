import { createGuide, type Guide } from '../guide/createGuide';
import type { GuideEffect } from '../guide/guideEffect';
import type { GuideEvent } from '../guide/guideEvent';
import type { GuideOptions, GuidePhase } from '../guide/guideState';
import type { GuideView } from '../guide/readGuide';
import { createPaceWatch } from '#device/live/createPaceWatch';
import type { LiveFrame } from '#device/live/liveFrame';
import { postureOf } from '../placing/postureOf';
import type { SetStep } from '#documents/plan/planSteps';
import { findPreparation } from '#core/exercises/findPreparation';
import type { HomeAdapters } from './homeAdapters';
import { slowedSentence, type HomeCamera } from './homeCamera';
import type { HomeState, PaceState } from './homeState';
import { createTeller } from './createTeller';
import { createPlacingWatch } from './placingWatch';
import { createStandWatch } from './standWatch';
import type { Sound } from '#device/sound/sound';
import { isFilmed } from './sessionOf';
import { startBendsWatch, type BendsWatch } from './bendsWatch';
import type { Bends } from './createBendsReader';
import type { PictureSize, SetKeeper } from './setKeeper';

/** The sets being done: the guide, and everything that it hears of and wants done. */
export interface Exercise {
  send(event: GuideEvent): void;
  frame(frame: LiveFrame): void;
  /** Ends listening and speaking; what is recorded goes on to be kept. */
  close(): void;
}

interface ExerciseParts {
  adapters: HomeAdapters;
  get: () => HomeState;
  set: (change: Partial<HomeState>) => void;
  /** May be changed on the way. */
  options: GuideOptions;
  camera: HomeCamera;
  sound: Sound;
  keeper: SetKeeper;
}

const tickMs = 200;
/** Without a picture for so long, nobody is seen: a call may hold the camera, ms. */
const staleMs = 1500;
const placingPhases: readonly GuidePhase[] = ['placing', 'bends', 'standing'];

export function startExercise(parts: ExerciseParts): Exercise {
  const { adapters, get, set, options, camera, sound, keeper } = parts;
  const placingWatch = createPlacingWatch();
  let standWatch = createStandWatch();
  let guide: Guide | null = null;
  let isClosed = false;
  let phase: GuidePhase | null = null;
  let stepIndex = -1;
  let lastFrameMs = -Infinity;
  let size: (PictureSize & { timeMs: number }) | null = null;
  let bendsWatch: BendsWatch | null = null;
  const noBends = Promise.resolve(null);
  let bends: Promise<Bends | null> = noBends;
  /** As far as they are read. */
  let knownBends: Bends | null = null;
  let mayCount = createPaceWatch();
  /** As the device was tried out, which may still go on in the beginning; it may become slower on the way. */
  let triedPace: PaceState = { state: 'unknown' };
  const hasFeedback = () => triedPace.state === 'known' && triedPace.hasFeedback;
  const stepNow = () => options.steps[guide?.state().stepIndex ?? 0]!;

  const act = (effect: GuideEffect) => {
    switch (effect.kind) {
      case 'say':
        return sound.say(effect);
      case 'tone':
        return sound.tone(effect.tone);
      case 'record':
        return record(effect);
      case 'count':
        return count(effect);
    }
  };
  const record = (effect: GuideEffect & { kind: 'record' }) => {
    switch (effect.action) {
      case 'start':
        teller.startRecording();
        if (size !== null) keeper.start(stepNow(), bends, size, teller.hear);
        return;
      case 'stop':
        keeper.takeResults(guide?.state().results ?? []);
        return keeper.stop(effect.result);
      default:
        return keeper[effect.action]();
    }
  };
  const count = (effect: GuideEffect & { kind: 'count' }) => {
    if (effect.action === 'stop') {
      if (bendsWatch !== null) takeBends(bendsWatch.finish());
      bendsWatch = null;
    } else if (guide?.state().phase === 'bends') {
      const bend = () => send({ kind: 'repetition', heard: null });
      if (size !== null && hasFeedback()) bendsWatch = startBendsWatch(adapters, size, bend);
    } else {
      keeper.go();
      mayCount = createPaceWatch();
    }
  };

  const takeBends = (next: Promise<Bends | null>) => {
    bends = next;
    knownBends = null;
    void next.then((known) => {
      if (bends === next) knownBends = known;
    });
  };

  const send = (event: GuideEvent) => {
    if (isClosed) return;
    guide?.send(event);
    refresh();
  };
  const refresh = () => {
    if (guide === null) return;
    const state = guide.state();
    keeper.takeResults(state.results);
    if (state.stepIndex !== stepIndex) enterStep(state.stepIndex);
    if (state.phase !== phase) enterPhase(state.phase);
    const view = guide.view();
    if (!isSame(view, get().guide)) set({ guide: view });
  };
  const enterStep = (index: number) => {
    const before = options.steps[stepIndex];
    stepIndex = index;
    set({ heard: [] });
    const step = options.steps[index]!;
    const isSameTask = before?.item.task === step.item.task && before.side === step.side;
    if (!isSameTask) {
      takeBends(noBends);
      set({ isFurniturePlaced: before?.item.task === step.item.task && get().isFurniturePlaced });
    }
    if (isFilmed(step)) camera.resume();
    else camera.pause();
  };
  const enterPhase = (next: GuidePhase) => {
    phase = next;
    if (next === 'standing') standWatch = createStandWatch();
    if (!placingPhases.includes(next)) set({ placing: null });
    // A device that was too slow in one set is tried again in the next.
    if (next === 'set-done' && hasFeedback()) {
      guide?.send({ kind: 'counting', works: true });
      set({ pace: triedPace });
    }
    if (next === 'stopped' || next === 'all-done') keeper.flush();
  };

  const look = (frame: LiveFrame) => {
    if (phase === null || !placingPhases.includes(phase)) return;
    const { item, side } = stepNow();
    if (item.kind === 'hold') return;
    const isBefore = phase !== 'standing' && knownBends === null && isWithBends(stepNow());
    const setup = {
      task: isBefore ? ('two-legged-bend' as const) : item.task,
      side,
      ...(knownBends !== null && !isBefore ? { bends: knownBends } : {}),
    };
    const { seenFps } = camera.rates();
    const facts = {
      isFurniturePlaced: get().isFurniturePlaced,
      brightness: camera.brightness(),
      cameraRateHz: seenFps > 0 ? seenFps : undefined,
    };
    const line = phase === 'standing' ? standWatch.push(frame) : undefined;
    if (line !== undefined) send({ kind: 'stand', line });
    const placing = placingWatch.push(frame, setup, facts, item.task);
    if (placing === null) return;
    set({ placing });
    send({ kind: 'placing', isGood: placing.ready, line: placing.first?.sentence ?? null });
  };
  const takePace = () => {
    const { pace } = get();
    if (triedPace.state === 'known' || pace.state !== 'known') return;
    triedPace = pace;
    if (!pace.hasFeedback) send({ kind: 'counting', works: false });
  };
  const tick = () => {
    const nowMs = adapters.clockMs();
    takePace();
    if (isFilmed(stepNow()) && nowMs - lastFrameMs > staleMs) sendPerson(false);
    if (guide?.state().phase === 'working' && isFilmed(stepNow()) && hasFeedback()) {
      const { trackedFps } = camera.rates();
      if (!mayCount(nowMs, trackedFps)) slowDown(trackedFps);
    }
    send({ kind: 'tick', nowMs });
  };
  const slowDown = (trackedFps: number) => {
    if (guide?.state().canCount !== true) return;
    send({ kind: 'counting', works: false });
    const { pace } = get();
    const sentence = slowedSentence(trackedFps);
    if (pace.state === 'known') set({ pace: { ...pace, sentence } });
  };
  const sendPerson = (isPresent: boolean) => {
    if (guide?.state().isPresent !== isPresent) send({ kind: 'person', isPresent });
  };

  const teller = createTeller({ get, set }, send, () => guide?.state().phase === 'working');
  guide = createGuide(options, adapters.clockMs(), act);
  takePace();
  refresh();
  const stops = [
    adapters.every(tickMs, tick),
    adapters.watchPage((isVisible) => {
      if (!isVisible) keeper.flush();
      send({ kind: 'page', isVisible });
    }),
  ];

  return {
    send,
    frame(frame) {
      if (isClosed) return;
      lastFrameMs = adapters.clockMs();
      const { row, timeMs, widthPx, heightPx } = frame;
      size = { timeMs, widthPx, heightPx };
      keeper.push(frame);
      sendPerson(row !== null);
      const posture = row === null ? null : postureOf(row, stepNow().side);
      if (guide?.state().posture !== posture) send({ kind: 'posture', posture });
      bendsWatch?.push(frame);
      look(frame);
    },
    close() {
      isClosed = true;
      stops.forEach((stop) => stop());
      stops.length = 0;
    },
  };
}

function isWithBends({ item, side }: SetStep): boolean {
  return findPreparation(item.task, side).easyBends;
}

function isSame(a: GuideView, b: GuideView | null): boolean {
  return b !== null && JSON.stringify(a) === JSON.stringify(b);
}
