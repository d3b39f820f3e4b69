import type { LeaveQuestion } from '#shell/navigation/createNavigation';
import { answering } from './answering';
import { createExercising } from './exercising';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp, SeenJoints } from './homeApp';
import { createHomeCamera } from './homeCamera';
import { initialCommon, isSaved, type HomeStep } from './homeState';
import { createHomeStorage } from './homeStorage';
import { createHomeStore } from './homeStore';
import { openChoice } from './openChoice';
import { createPainWarnings } from './painWarnings';
import { reviewing } from './reviewing';
import { isFilmed, sessionOf } from './sessionOf';
import { createSetKeeper } from './setKeeper';

const leaveQuestion: LeaveQuestion = {
  title: 'End this session?',
  sentence: 'The exercise is still running. If you leave, it ends here; the sets recorded so far are kept.',
  leave: 'End it and leave',
};

/** A home session over the given world. */
export function createHome(adapters: HomeAdapters): HomeApp {
  const home = createHomeStore();
  const { get, set, change, enter } = home;
  const watchers = new Set<(joints: SeenJoints) => void>();
  const sound = adapters.createSound((caption) => change('exercise', { caption }));
  set({ sound: { ...get().sound, hasVoice: sound.hasVoice() } });
  let begun = { id: adapters.newId(), startedAt: adapters.now().toISOString() };
  const beginSession = () => {
    begun = { id: adapters.newId(), startedAt: adapters.now().toISOString() };
  };
  const session = (endedAt: string | null = null) => sessionOf({ ...begun, endedAt }, get());
  const warnings = createPainWarnings(home);

  const storage = createHomeStorage({
    adapters,
    get,
    set,
    onMeasured: (recording) => keeper.replace(recording, true),
  });
  const camera = createHomeCamera({
    adapters,
    get,
    set,
    onFrame(frame) {
      watchers.forEach((watch) => watch(frame));
      exercising.frame(frame);
    },
    onWorks: (works) => exercising.send({ kind: 'camera', works }),
  });
  const keeper = createSetKeeper({ adapters, home, repository: storage.repository, camera, session });
  const exercising = createExercising({
    adapters,
    home,
    storage,
    camera,
    keeper,
    sound,
    warnings,
    beginSession,
  });
  const pause = () => exercising.send({ kind: 'press', press: 'pause' });
  const { openPlan, keepChosen, startFree } = openChoice({ adapters, home, storage });
  const isAt = (...steps: HomeStep[]) => steps.includes(get().step);

  const toStart = () => {
    keeper.forget();
    const { storage: kept, interrupted, background, plans, cameras, sound: wanted } = get();
    const stays = { storage: kept, interrupted, background, plans, cameras, sound: wanted };
    enter('plan', {}, { ...initialCommon, ...stays });
    void storage.listPlans();
  };
  const letCameraGo = () => {
    camera.close();
    storage.resumeMeasuring();
  };

  /** Ends the running exercise; what was recorded is kept. */
  const end = () => {
    exercising.send({ kind: 'press', press: 'end' });
    exercising.end();
    storage.settleDrops();
    void keeper.settled().then(async () => {
      // What was answered up to here is kept with the sets that were done.
      const isUnkept = get().sets.length > 0 && !isSaved(get());
      const kept = isUnkept ? session(adapters.now().toISOString()) : null;
      toStart();
      if (kept !== null) await (await storage.repository).sessions.save(kept).catch(() => undefined);
    });
  };
  adapters.navigation.guard({
    question: (to) => (isAt('exercise') && !exercising.isOver() && to !== 'home' ? leaveQuestion : null),
  });
  /** Videos that wait are measured while the kept sessions are shown, not only while this session is. */
  const measureWaiting = () => {
    if (adapters.navigation.screen() === 'sessions') void storage.open();
  };
  measureWaiting();
  adapters.navigation.store.subscribe(measureWaiting);
  // Its own reviews lead back to it; every other screen ends it.
  adapters.navigation.store.subscribe(({ screen }, before) => {
    if (before.screen === 'home' && screen !== 'home' && screen !== 'review') end();
  });

  return {
    store: home.store,
    ...reviewing({ adapters, get, set, storage, keeper, beginSession }),
    ...answering({ adapters, home, storage, keeper, warnings, session, pause }),
    ...exercising.actions,
    sessionId: () => begun.id,
    enter: storage.open,
    leave: () => adapters.navigation.returnTo('start', true),
    dismissProblem: () => set({ problem: null }),
    startFree,
    openPlanFile: openPlan.fromFile,
    openPlanLink: openPlan.fromLink,
    openExamplePlan: openPlan.example,
    openKeptPlan: openPlan.kept,
    recoverInterrupted: storage.recoverInterrupted,
    dropInterrupted: storage.dropInterrupted,
    undoDrop: storage.undoDrop,

    setRedFlag: (redFlag) => change('overview', { redFlag }),
    setConfirmed: (isConfirmed) => change('overview', { isConfirmed }),
    confirm() {
      const state = get();
      if (state.step !== 'overview' || !state.isConfirmed || state.redFlag !== null) return;
      keepChosen();
      const { painBefore } = state;
      const painWarning = painBefore === null ? null : warnings.of('before', painBefore);
      enter('pain-before', { painWarning });
    },
    back() {
      if (isAt('overview')) enter('plan', {}, { problem: null });
      else if (isAt('pain-before')) enter('overview', { isConfirmed: true }, { problem: null });
      else if (isAt('camera')) {
        letCameraGo();
        enter('pain-before', {}, { problem: null });
      }
    },

    setPainBefore(painBefore) {
      if (isSaved(get())) return;
      const painWarning = warnings.of('before', painBefore);
      change('pain-before', { painWarning, isToldToGoOn: false });
      set({ painBefore });
    },
    setToldToGoOn: (isToldToGoOn) => change('pain-before', { isToldToGoOn }),
    goOnFromPain() {
      const state = get();
      if (state.step !== 'pain-before' || state.painBefore === null) return;
      if (state.painWarning !== null && !state.isToldToGoOn) return;
      if (state.steps.some(isFilmed)) return enter('camera');
      sound.unlock();
      exercising.begin();
    },
    stopBeforeStart() {
      if (!isAt('overview', 'pain-before', 'camera')) return;
      letCameraGo();
      toStart();
    },

    async openCamera(wish = { facing: 'front' }) {
      if (!isAt('camera', 'exercise')) return;
      sound.unlock();
      adapters.tracking.release();
      await storage.pauseMeasuring();
      if (isAt('camera', 'exercise')) await camera.open(wish);
    },
    startExercise() {
      if (!isAt('camera') || get().camera.state !== 'on') return;
      sound.unlock();
      exercising.begin();
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
      if (isAt('summary')) toStart();
    },
  };
}
