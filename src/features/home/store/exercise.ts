import { shallow } from 'zustand/shallow';
import type { PictureSize } from '#core/measurement/pictureLeg';
import type { LiveKnee } from '#device/live/createLiveSet';
import type { LiveFrame } from '#device/live/liveFrame';
import type { Sound } from '#device/sound/sound';
import { createGuide, type Guide } from '../guide/createGuide';
import type { GuideEffect } from '../guide/guideEffect';
import type { GuideEvent } from '../guide/guideEvent';
import type { GuideOptions, GuidePhase, Unseen } from '../guide/guideState';
import type { GuideView } from '../guide/guideView';
import { needsSameFurniture } from '../placing/checks/checkFurniture';
import { postureOf } from '../placing/postureOf';
import { createCountingPace } from './countingPace';
import { createTeller } from './createTeller';
import { createEasyBends } from './easyBends';
import type { HomeAdapters } from './homeAdapters';
import type { HomeCamera } from './homeCamera';
import { partOf } from './homeState';
import type { HomeStore } from './homeStore';
import { createPlacingLook } from './placingLook';
import { isFilmed } from './sessionOf';
import type { RunningSetEvent, SetKeeper } from './setKeeper';

/** The sets being done: the guide, its events and its effects. */
export interface Exercise {
  send(event: GuideEvent): void;
  frame(frame: LiveFrame): void;
  /** How the knee stands to its limits at this moment of work; null where that is not known. */
  knee(): LiveKnee | null;
  /** Ends listening and speaking; saving of what was recorded continues. */
  close(): void;
}

interface ExerciseParts {
  adapters: HomeAdapters;
  home: HomeStore;
  /** May be changed on the way. */
  options: GuideOptions;
  /** Whether what the first task needs stands where it should. */
  isSetUp: boolean;
  camera: HomeCamera;
  sound: Sound;
  keeper: SetKeeper;
}

const tickMs = 200;
/** Without a picture for this long, nobody is seen: a call may hold the camera, ms. */
const staleMs = 1500;
/** A camera without a picture for this long is let go, so that the person can switch it on again, ms. */
const deadMs = 10_000;
/** A knee moves on: what was measured this long ago says nothing of it now, ms. */
const kneeStaleMs = 700;

export function startExercise(parts: ExerciseParts): Exercise {
  const { adapters, home, options, isSetUp, camera, sound, keeper } = parts;
  const { get, change } = home;
  const own = () => partOf(get(), 'exercise');
  let guide: Guide | null = null;
  let isClosed = false;
  let phase: GuidePhase | null = null;
  let stepIndex = -1;
  let lastFrameMs = -Infinity;
  /** Of that, what the page was awake for, ms. */
  let silentMs = 0;
  let recordedSize: PictureSize | null = null;
  let seenKnee: { knee: LiveKnee | null; atMs: number } = { knee: null, atMs: -Infinity };
  let size: (PictureSize & { timeMs: number }) | null = null;
  const bends = createEasyBends(adapters);
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
        recordedSize = size;
        if (size !== null) keeper.start(stepNow(), bends.read(), size, hear);
        return;
      case 'stop':
        keeper.takeResults(guide?.state().results ?? []);
        return keeper.stop(effect.result);
      default:
        return keeper[effect.action]();
    }
  };
  const count = (effect: GuideEffect & { kind: 'count' }) => {
    if (effect.action === 'stop') bends.end();
    else if (guide?.state().phase === 'bends') {
      const bend = () => send({ kind: 'repetition', heard: null });
      if (size !== null && pace.hasFeedback()) bends.watch(size, bend);
    } else {
      keeper.go();
      pace.beginSet();
    }
  };
  const hear = (event: RunningSetEvent) => {
    if (event.kind === 'counting-failed') send({ kind: 'counting', works: false });
    else if (event.kind === 'knee') seenKnee = { knee: event.knee, atMs: adapters.clockMs() };
    else teller.hear(event);
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
    if (!isSame(view, own().guide)) change('exercise', { guide: view });
  };
  const enterStep = (index: number) => {
    const before = options.steps[stepIndex];
    stepIndex = index;
    change('exercise', { heard: [] });
    const step = options.steps[index]!;
    const isSameTask = before?.item.task === step.item.task && before.side === step.side;
    if (!isSameTask) {
      bends.forget();
      const stands = before?.item.task === step.item.task && own().isFurniturePlaced;
      const isFurniturePlaced = stands || (isSetUp && needsSameFurniture(step.item, options.steps[0]!.item));
      change('exercise', { isFurniturePlaced });
    }
    if (isFilmed(step)) camera.resume();
    else camera.pause();
  };
  const enterPhase = (next: GuidePhase) => {
    phase = next;
    placingLook.enter(next);
    if (next === 'set-done') pace.tryAgain();
    if (next === 'stopped' || next === 'all-done') keeper.flush();
  };

  const tick = () => {
    const nowMs = adapters.clockMs();
    pace.take();
    if (isFilmed(stepNow()) && nowMs - lastFrameMs > staleMs) missPictures(nowMs);
    if (guide?.state().phase === 'working' && isFilmed(stepNow()))
      pace.look(nowMs, camera.rates().trackedFps);
    const isSpeaking = sound.isSpeaking();
    if (guide?.state().isSpeaking !== isSpeaking) send({ kind: 'voice', isSpeaking });
    send({ kind: 'tick', nowMs });
  };
  const sendPerson = (isPresent: boolean, unseen: Unseen | null = null) => {
    const known = guide?.state();
    if (known?.isPresent === isPresent && known.unseen === unseen) return;
    send({ kind: 'person', isPresent, ...(unseen === null ? {} : { unseen }) });
  };
  const missPictures = (nowMs: number) => {
    const hasPictures = !camera.isFollowing() || camera.rates().seenFps > 0;
    sendPerson(false, hasPictures ? 'not-followed' : 'no-pictures');
    const isWaiting = hasPictures || guide?.state().isVisible === false;
    silentMs = isWaiting ? 0 : silentMs + Math.min(2 * tickMs, nowMs - (guide?.state().nowMs ?? nowMs));
    if (silentMs >= deadMs) camera.giveUp();
  };
  /** A recording has one size of picture. */
  const isTurned = ({ widthPx, heightPx }: PictureSize) =>
    guide?.state().recording !== 'off' &&
    recordedSize !== null &&
    (widthPx !== recordedSize.widthPx || heightPx !== recordedSize.heightPx);

  const placingLook = createPlacingLook({ home, camera, bends, send });
  const teller = createTeller(home, send, () => guide?.state().phase === 'working');
  const pace = createCountingPace(
    home,
    () => guide?.state().canCount === true,
    (works) => send({ kind: 'counting', works }),
  );
  guide = createGuide(options, adapters.clockMs(), act);
  pace.take();
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
      silentMs = 0;
      const { row, timeMs, widthPx, heightPx } = frame;
      size = { timeMs, widthPx, heightPx };
      keeper.push(frame);
      if (isTurned(size)) sendPerson(false, 'turned');
      else sendPerson(row !== null);
      const posture = row === null ? null : postureOf(row, stepNow().side);
      if (guide?.state().posture !== posture) send({ kind: 'posture', posture });
      bends.push(frame);
      placingLook.push(frame, stepNow());
    },
    knee() {
      const isFresh = adapters.clockMs() - seenKnee.atMs < kneeStaleMs;
      return isFresh && guide?.state().phase === 'working' ? seenKnee.knee : null;
    },
    close() {
      isClosed = true;
      stops.forEach((stop) => stop());
      stops.length = 0;
    },
  };
}

function isSame(a: GuideView, b: GuideView | null): boolean {
  if (b === null) return false;
  const { hold, presses, ...rest } = a;
  const { hold: holdBefore, presses: pressesBefore, ...restBefore } = b;
  return shallow(rest, restBefore) && shallow(hold, holdBefore) && shallow(presses, pressesBefore);
}
