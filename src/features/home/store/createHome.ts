import { createStore } from 'zustand/vanilla';
import { awakeSentence } from '#device/camera/keepAwake';
import type { GuideOptions } from '../guide/guideState';
import { cautionsOf, painAdvice } from '#documents/plan/cautions';
import { explainProblem } from '#shell/explainProblem';
import { openChoice } from './openChoice';
import { startExercise, type Exercise } from './exercise';
import type { HomeAdapters } from './homeAdapters';
import type { HomeApp, SeenJoints } from './homeApp';
import { createHomeCamera } from './homeCamera';
import { initialHomeState, type HomeState, type HomeStep, type PainWarning } from './homeState';
import { createHomeStorage } from './homeStorage';
import { reviewing } from './reviewing';
import { createSetKeeper } from './setKeeper';
import { isFilmed, sessionOf } from './sessionOf';

/** A home session over the given world. */
export function createHome(adapters: HomeAdapters): HomeApp {
  const store = createStore<HomeState>(() => initialHomeState);
  const { getState: get, setState: set } = store;
  const watchers = new Set<(joints: SeenJoints) => void>();
  const sound = adapters.createSound((caption) => set({ caption }));
  set({ sound: { ...get().sound, hasVoice: sound.hasVoice() } });
  let exercise: Exercise | null = null;
  let options: GuideOptions | null = null;
  let letSleep: (() => void) | null = null;
  let begun = { id: adapters.newId(), startedAt: adapters.now().toISOString() };

  const session = (endedAt: string | null = null) => sessionOf({ ...begun, endedAt }, get());
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
      exercise?.frame(frame);
    },
    onWorks: (works) => exercise?.send({ kind: 'camera', works }),
  });
  const keeper = createSetKeeper({
    adapters,
    get,
    set,
    repository: storage.repository,
    camera,
    session,
    onCountingFailed: () => exercise?.send({ kind: 'counting', works: false }),
  });
  const { openPlan, keepChosen, ...choosing } = openChoice({ adapters, get, set, storage });
  const isAt = (...steps: HomeStep[]) => steps.includes(get().step);
  const cautions = () => cautionsOf(get().plan);

  const warningOf = (when: PainWarning['when'], score: number): PainWarning | null => {
    const advice = painAdvice(score, cautions());
    return advice === null ? null : { when, score, advice };
  };

  const endFilming = () => {
    letSleep?.();
    letSleep = null;
    camera.close();
    set({ awakeSentence: null });
  };
  /** What is recorded goes on to be kept. */
  const endExercise = () => {
    exercise?.close();
    exercise = null;
    options = null;
    endFilming();
    set({ guide: null, placing: null });
    void keeper.settled().then(storage.resumeMeasuring);
  };
  const isOver = () => ['stopped', 'all-done'].includes(get().guide?.phase ?? '');
  /** Nothing is filmed any longer than needed, and nothing goes on while a pain score above the limit stands. */
  store.subscribe(({ guide, painWarning }, before) => {
    if (exercise === null || guide === null || guide.phase === before.guide?.phase) return;
    if (painWarning?.when === 'during') exercise.send({ kind: 'press', press: 'pause' });
    if (!isOver()) return;
    const mine = exercise;
    void keeper.settled().then(() => {
      if (exercise === mine) endFilming();
    });
  });
  const beginSession = () => {
    begun = { id: adapters.newId(), startedAt: adapters.now().toISOString() };
  };
  const begin = () => {
    storage.settleDrops();
    const { steps, sound: wanted } = get();
    options = { steps, beyondPainLimit: cautions().beyondPainLimit, outsideSound: wanted.outside };
    beginSession();
    set({ step: 'exercise', sets: [], saving: 'no', painAfter: null, effort: null, remark: '' });
    letSleep = adapters.keepAwake((state) => set({ awakeSentence: awakeSentence(state) }));
    exercise = startExercise({ adapters, get, set, options, camera, sound, keeper });
  };
  const toStart = () => {
    keeper.forget();
    const { storage: kept, interrupted, background, plans, cameras, sound: wanted } = get();
    set({ ...initialHomeState, storage: kept, interrupted, background, plans, cameras, sound: wanted });
    void storage.listPlans();
  };
  const changeSet = (index: number, change: Partial<HomeState['sets'][number]>) =>
    set({ sets: get().sets.map((one, at) => (at === index ? { ...one, ...change } : one)) });

  return {
    store,
    ...choosing,
    ...reviewing({ adapters, get, set, storage, keeper, beginSession }),
    sessionId: () => begun.id,
    enter: storage.open,
    leave() {
      exercise?.send({ kind: 'press', press: 'end' });
      endExercise();
      storage.settleDrops();
      adapters.app.show('start');
      void keeper.settled().then(async () => {
        const { sets, saving } = get();
        // What was answered up to here is kept with the sets that were done.
        const kept = sets.length > 0 && saving !== 'saved' ? session(adapters.now().toISOString()) : null;
        toStart();
        if (kept !== null) await (await storage.repository).sessions.save(kept).catch(() => undefined);
      });
    },
    dismissProblem: () => set({ problem: null }),
    openPlanFile: openPlan.fromFile,
    openPlanLink: openPlan.fromLink,
    openExamplePlan: openPlan.example,
    openKeptPlan: openPlan.kept,
    keepInterrupted: storage.keepInterrupted,
    dropInterrupted: storage.dropInterrupted,
    undoDrop: storage.undoDrop,

    setRedFlag: (redFlag) => set({ redFlag }),
    setConfirmed: (isConfirmed) => set({ isConfirmed }),
    confirm() {
      const { isConfirmed, redFlag } = get();
      if (!isAt('overview') || !isConfirmed || redFlag !== null) return;
      keepChosen();
      set({ step: 'pain-before' });
    },
    back() {
      const before: Partial<Record<HomeStep, HomeStep>> = {
        overview: 'plan',
        'pain-before': 'overview',
        camera: 'pain-before',
      };
      const step = before[get().step];
      if (step === undefined) return;
      if (get().step === 'camera') {
        camera.close();
        storage.resumeMeasuring();
      }
      set({ step, problem: null });
    },

    setPainBefore(painBefore) {
      if (get().saving === 'saved') return;
      if (isAt('pain-before')) set({ painWarning: warningOf('before', painBefore), isToldToGoOn: false });
      set({ painBefore });
    },
    setToldToGoOn: (isToldToGoOn) => set({ isToldToGoOn }),
    goOnFromPain() {
      const { painBefore, painWarning, isToldToGoOn, steps } = get();
      if (!isAt('pain-before') || painBefore === null || (painWarning !== null && !isToldToGoOn)) return;
      set({ painWarning: null });
      if (steps.some(isFilmed)) return set({ step: 'camera' });
      sound.unlock();
      begin();
    },
    stopBeforeStart() {
      if (isAt('overview', 'pain-before', 'camera')) {
        camera.close();
        storage.resumeMeasuring();
        toStart();
      }
    },

    async openCamera(wish = { facing: 'front' }) {
      if (!isAt('camera', 'exercise')) return;
      sound.unlock();
      adapters.app.release();
      await storage.pauseMeasuring();
      if (isAt('camera', 'exercise')) await camera.open(wish);
    },
    startExercise() {
      if (!isAt('camera') || get().camera.state !== 'on') return;
      sound.unlock();
      begin();
    },
    finishOwnRecordings() {
      if (isAt('camera') && get().sets.length > 0) set({ step: 'after', problem: null });
    },
    stream: camera.stream,
    watchJoints(watcher) {
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },

    press(press) {
      sound.unlock();
      const goesOn = press === 'resume' || press === 'skip-rest' || press === 'start-anyway';
      if (goesOn && get().painWarning?.when === 'during') return;
      exercise?.send({ kind: 'press', press });
      if (press === 'stop-pain') set({ painWarning: null });
    },
    setFurniturePlaced: (isFurniturePlaced) => set({ isFurniturePlaced }),
    setSound(change) {
      const wanted = { ...get().sound, ...change };
      set({ sound: wanted });
      sound.setOn(wanted);
      if (options !== null) options.outsideSound = wanted.outside;
    },
    finishExercise() {
      if (!isAt('exercise') || !isOver()) return;
      endExercise();
      set({ step: 'after' });
    },

    setPainDuring(index, painDuring) {
      if (get().saving === 'saved') return;
      changeSet(index, { painDuring });
      const painWarning = warningOf('during', painDuring);
      if (painWarning === null && get().painWarning?.when !== 'during') return;
      set({ painWarning });
      if (painWarning !== null) exercise?.send({ kind: 'press', press: 'pause' });
    },
    goOnInSpiteOfPain() {
      if (get().painWarning?.when !== 'during') return;
      set({ painWarning: null });
      exercise?.send({ kind: 'press', press: 'resume' });
    },
    discardSet(index) {
      if (get().saving !== 'saved') changeSet(index, { isDiscarded: true });
    },
    undoDiscard(index) {
      if (get().saving !== 'saved') changeSet(index, { isDiscarded: false });
    },
    setPainAfter(painAfter) {
      if (get().saving !== 'saved') set({ painAfter, painWarning: warningOf('after', painAfter) });
    },
    setEffort: (effort) => {
      if (get().saving !== 'saved') set({ effort });
    },
    setRemark: (remark) => {
      if (get().saving !== 'saved') set({ remark });
    },
    async saveSession() {
      if (!isAt('after', 'summary') || get().saving === 'saving' || get().saving === 'saved') return;
      set({ saving: 'saving', problem: null });
      try {
        await keeper.settled();
        const repository = await storage.repository;
        await repository.sessions.save(session(adapters.now().toISOString()));
        for (const { isDiscarded, recordingId } of get().sets) {
          if (isDiscarded && recordingId !== null) await repository.recordings.remove(recordingId);
        }
        set({ saving: 'saved', step: 'summary', painWarning: null });
      } catch (error) {
        set({ saving: 'failed', step: 'summary', problem: explainProblem(error, 'be saved') });
      }
    },
    startOver() {
      if (isAt('summary')) toStart();
    },
  };
}
