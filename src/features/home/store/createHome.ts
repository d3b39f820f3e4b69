import type { LeaveQuestion } from '#shell/navigation/createNavigation';
import { message } from '#words/messages/message';
import { answering } from './answering';
import { atCamera } from './atCamera';
import { beforeStart } from './beforeStart';
import { comingBack } from './comingBack';
import { createExercising } from './exercising';
import { createHabits } from './habits';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp, SeenJoints } from './homeApp';
import { createHomeCamera } from './homeCamera';
import { hasSaid, initialCommon, isSaved, type HomeStep, type InterruptedView } from './homeState';
import { createHomeStorage } from './homeStorage';
import { createHomeStore } from './homeStore';
import { lookingBack } from './lookingBack';
import { openChoice } from './openChoice';
import { ownFiles } from './ownFiles';
import { createPainWarnings } from './painWarnings';
import { replaying } from './replaying';
import { isFilmed, sessionOf } from './sessionOf';
import { createSessionSaver } from './sessionSaver';
import { createSetKeeper } from './setKeeper';
import { telling } from './telling';

const leaveQuestion = (): LeaveQuestion => ({
  title: message('leave.title'),
  sentence: message('leave.what'),
  leave: message('leave.end'),
});

/** A home session over the given world. */
export function createHome(given: HomeAdapters): HomeApp {
  const begin = () => ({
    id: given.newId(),
    startedAt: given.now().toISOString(),
    beganMs: given.clockMs(),
  });
  let begun = begin();
  // A session's times follow one another even where the device's date is changed meanwhile.
  const now = () => new Date(Date.parse(begun.startedAt) + given.clockMs() - begun.beganMs);
  const adapters: HomeAdapters = { ...given, now };
  const home = createHomeStore();
  const { get, set, change, enter } = home;
  const watchers = new Set<(joints: SeenJoints) => void>();
  const sound = adapters.createSound((caption) => change('exercise', { caption }));
  set({ sound: { ...get().sound, hasVoice: sound.hasVoice() } });
  const beginSession = () => {
    begun = begin();
  };
  const restartClock = () => {
    begun = { ...begin(), id: begun.id };
  };
  const session = (endedAt: string | null = null) => sessionOf({ ...begun, endedAt }, get());
  const warnings = createPainWarnings(home);

  const storage = createHomeStorage({
    adapters,
    get,
    set,
    onMeasured(recording) {
      keeper.replace(recording);
      refreshToday();
    },
    onFailed(recordingId) {
      keeper.giveUp(recordingId);
      refreshToday();
    },
  });
  const camera = createHomeCamera({
    adapters,
    get,
    set,
    onFrame(frame) {
      exercising.frame(frame);
      const { row, widthPx, heightPx } = frame;
      const knee = exercising.knee();
      watchers.forEach((watch) => watch({ row, widthPx, heightPx, knee }));
    },
    onWorks: (works) => exercising.send({ kind: 'camera', works }),
  });
  const keeper = createSetKeeper({ adapters, home, repository: storage.repository, camera, session });
  const habits = createHabits(storage.repository);
  const cameraStep = atCamera({ adapters, home, storage, camera, sound, habits });
  const saver = createSessionSaver({ home, storage, keeper, session });
  const exercising = createExercising({
    adapters,
    home,
    storage,
    camera,
    keeper,
    sound,
    warnings,
    saver,
    restartClock,
  });
  /** @param isSetUp  whether what the first task needs stands where it should */
  const beginExercise = (isSetUp = false) => {
    sound.unlock();
    exercising.begin(isSetUp);
  };
  const choice = openChoice({ adapters, home, storage, beginSession });
  const { openPlan, startFree } = choice;
  let hasEntered = false;
  const isAt = (...steps: HomeStep[]) => steps.includes(get().step);

  const refreshToday = () => {
    if (isAt('plan')) void storage.listToday();
  };
  const toStart = () => {
    keeper.forget();
    const { storage: kept, interrupted, background, plans, today, cameras, sound: wanted } = get();
    const stays = { storage: kept, interrupted, background, plans, today, cameras, sound: wanted };
    enter('plan', {}, { ...initialCommon, ...stays });
  };
  const takeHabits = async () => {
    const kept = (await habits.find()).sound;
    if (kept !== null) exercising.actions.setSound(kept);
  };
  const letCameraGo = () => {
    camera.close();
    storage.resumeMeasuring();
  };

  /** Back to the choice; what was said up to here is kept, with the sets that were done. */
  const close = async () => {
    const isUnkept = hasSaid(get()) && !isSaved(get());
    const kept = isUnkept ? session(adapters.now().toISOString()) : null;
    toStart();
    await saver.settle();
    if (kept !== null) await (await storage.repository).sessions.save(kept).catch(() => undefined);
    await storage.listToday();
  };

  /** Ends the running exercise; what was recorded is kept. */
  const end = () => {
    exercising.send({ kind: 'press', press: 'end' });
    exercising.end();
    storage.settleDrops();
    void keeper.settled().then(close);
  };
  adapters.navigation.guard({
    question: (to) => (isAt('exercise') && !exercising.isOver() && to !== 'home' ? leaveQuestion() : null),
  });
  /** Videos that wait are measured while the kept sessions are shown, not only while this session is. */
  const measureWaiting = () => {
    if (adapters.navigation.screen() === 'sessions') void storage.open();
  };
  measureWaiting();
  adapters.navigation.store.subscribe(measureWaiting);
  // Every other screen ends it.
  adapters.navigation.store.subscribe(({ screen }, before) => {
    if (before.screen === 'home' && screen !== 'home') end();
  });

  const answers = answering({
    adapters,
    home,
    storage,
    saver,
    keeper,
    warnings,
    session,
    send: exercising.send,
  });
  const before = beforeStart({
    adapters,
    home,
    choice,
    warnings,
    saver,
    goOn() {
      choice.stepPlan(session());
      if (get().steps.some(isFilmed)) return cameraStep.enter(choice.isKnown());
      beginExercise();
    },
    letCameraGo,
    toStart: () => void close(),
    save: answers.saveSession,
  });

  return {
    store: home.store,
    ...ownFiles({ adapters, get, set, storage, keeper, restartClock }),
    ...answers,
    ...telling(home),
    ...replaying({ home, storage, keeper }),
    ...lookingBack({ home, storage, session }),
    ...before,
    ...exercising.actions,
    ...comingBack({ adapters: given, home, storage, keeper, openPlan, beginSession }),
    sessionId: () => begun.id,
    async enter() {
      await storage.open();
      if (hasEntered || get().storage.state === 'blocked') return;
      hasEntered = true;
      await takeHabits();
      await storage.listToday();
      await openPlan.shown();
    },
    leave: () => adapters.navigation.returnTo('start', true),
    dismissProblem: () => set({ problem: null }),
    startFree,
    openPlanFile: openPlan.fromFile,
    openPlanLink: openPlan.fromLink,
    openSealedPlan: openPlan.sealed,
    openExamplePlan: openPlan.example,
    openKeptPlan: (id, isToRead = false) => openPlan.kept(id, isToRead),
    recoverInterrupted: storage.recoverInterrupted,
    dropInterrupted: storage.dropInterrupted,
    undoDrop: storage.undoDrop,

    async showSending(id) {
      const isOfIt = ({ sessionId, state }: InterruptedView) => state === 'offered' && sessionId === id;
      for (const set of get().interrupted.filter(isOfIt)) await storage.recoverInterrupted(set.id);
      const session = get().today.unsent.find((one) => one.id === id);
      if (isAt('plan') && session !== undefined) enter('send', { session }, { problem: null });
    },
    back() {
      if (isAt('send', 'past')) void close();
      else if (isAt('summary')) change('summary', { page: 'result' });
      else before.back();
    },

    openCamera: cameraStep.open,
    startExercise() {
      const state = get();
      if (state.step !== 'camera' || state.camera.state !== 'on') return;
      const { deviceId, facing } = state.camera.camera;
      void habits.keep({ camera: { deviceId, facing } });
      beginExercise(state.isAgain);
    },
    setSound(changed) {
      exercising.actions.setSound(changed);
      const { voice, tones, outside } = get().sound;
      void habits.keep({ sound: { voice, tones, outside } });
    },
    finishOwnRecordings() {
      if (isAt('camera') && get().sets.length > 0) enter('after', {}, { problem: null });
    },
    stream: camera.stream,
    watchJoints(watcher) {
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },
    startOver() {
      if (isAt('summary')) void close();
    },
  };
}
