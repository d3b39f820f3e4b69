import { createStore, type StoreApi } from 'zustand/vanilla';
import { trackVideo } from '../analysis/trackVideo';
import { framesCsv } from '../export/framesCsv';
import { repetitionsCsv } from '../export/repetitionsCsv';
import { VideoProblem } from '../frames/videoProblem';
import type { PoseModel } from '../keypoints/poseModel';
import type { SetSetup } from '../measurement/measureSet';
import { defaultLimits, type Limits } from '../protocol/limits';
import type { Side } from '../protocol/side';
import type { TaskId } from '../protocol/tasks';
import { buildSession } from '../session/buildSession';
import type { Adapters } from './adapters';
import { initialState, type AppState, type ScreenName } from './appState';
import { checkSameVideo } from './checkSameVideo';
import { explainProblem } from './explainProblem';
import { endMove, moveLimits, startLimits, undoLimits, type LimitHistory } from './limitHistory';
import { judgeAll, measuredAgain, sessionRecording, trackedRecording, type Recording } from './recording';
import { tellingRepetition } from './tellingRepetition';
import { createTrackerKeeper } from './trackerKeeper';
import { watchedSource } from './watchedSource';

/** A file of a size that no session document of a recording within bounds reaches, bytes. */
const largestSessionBytes = 300_000_000;

type PictureWatcher = (picture: ImageBitmap) => void;

/** Everything that can be done, over one store; what changes a frame stands in `recording()`. */
export interface App {
  readonly store: StoreApi<AppState>;
  recording(): Recording | null;
  setTask(task: TaskId): void;
  setSide(side: Side): void;
  /** Undefined where it is not known. */
  setBodyHeight(bodyHeightCm: number | undefined): void;
  setModel(model: PoseModel): void;
  /** Starts the pose network ahead of its first use. */
  prepare(): Promise<void>;
  openExample(): Promise<void>;
  /** Takes a video to be measured, or a session document, which opens at once. */
  openFile(file: File): Promise<void>;
  /** Shows a session that is kept on this device, with its video where there is one; the review leads back to where it stood. */
  openKept(sessionText: string, fileName: string, video: File | null): void;
  attachVideo(file: File): Promise<void>;
  /** Tracks the chosen video and measures it. */
  startTracking(): Promise<void>;
  /** Tracks the shown recording's video once more on this device. */
  trackAgain(): Promise<void>;
  cancel(): void;
  /** Hears of every picture while a video is tracked; returns the way to stop. */
  watchPictures(watcher: PictureWatcher): () => void;
  moveLimit(change: Partial<Limits>): void;
  endLimitMove(): void;
  undoLimits(): void;
  resetLimits(): void;
  select(index: number): void;
  saveSession(): void;
  /** Hands over the shown recording as CSV, a row a repetition or a row a frame. */
  saveTable(rows: 'repetitions' | 'frames'): void;
  show(screen: Exclude<ScreenName, 'tracking'>): void;
  dismissProblem(): void;
  /** Stops the pose network, which is started anew when it is needed: for whoever needs the device more. */
  release(): void;
}

export function createApp(adapters: Adapters): App {
  const store = createStore<AppState>(() => initialState);
  const { getState: get, setState: set } = store;
  const keeper = createTrackerKeeper(adapters.createTracker, (device) => set({ device }));
  const watchers = new Set<PictureWatcher>();
  let recording: Recording | null = null;
  let chosenFile: File | null = null;
  let job = new AbortController();
  /** Where to go back to when tracking does not come to its end. */
  let cameFrom: Exclude<ScreenName, 'tracking'> = 'start';

  /** Begins a job that ends every other one; what it throws becomes a problem, unless it was cancelled. */
  const run = async (doing: string, work: (signal: AbortSignal) => Promise<void>) => {
    job.abort();
    const { signal } = (job = new AbortController());
    set({ problem: null });
    try {
      await work(signal);
    } catch (error) {
      if (!signal.aborted) set({ problem: explainProblem(error, doing) });
    } finally {
      if (!signal.aborted) set({ opening: null, progress: null });
    }
  };

  const forgetTracker = () => {
    keeper.discard();
    set({ device: { state: 'unknown' } });
  };

  const showRecording = (next: Recording, limits: LimitHistory) => {
    recording = next;
    const { setup } = next.measurement;
    const judgements = judgeAll(next.measurement, limits.present);
    set({
      screen: 'review',
      setup,
      limits,
      judgements,
      changedVerdicts: null,
      selected: tellingRepetition(judgements, limits.present),
      revision: get().revision + 1,
    });
  };

  const measureAgain = () => {
    const { side, ...setup } = get().setup;
    if (recording === null || side === null || get().screen !== 'review') return;
    showRecording(measuredAgain(recording, { ...setup, side }), get().limits);
  };

  /** Judges again; the change is counted against the limits before it. */
  const setLimits = (limits: LimitHistory, before: Limits) => {
    if (recording === null) return set({ limits });
    const { measurement } = recording;
    const judgements = judgeAll(measurement, limits.present);
    const earlier = judgeAll(measurement, before);
    const changed = judgements.filter(({ verdict }, index) => verdict !== earlier[index]?.verdict);
    set({ limits, judgements, changedVerdicts: changed.length });
  };

  const track = async (video: File, setup: SetSetup, origin: Recording['origin'], note: string) => {
    const { screen, model: size } = get();
    cameFrom = screen === 'tracking' ? 'start' : screen;
    await run('be tracked', async (signal) => {
      set({ screen: 'tracking', progress: null, ...(cameFrom === 'home' ? { backTo: 'home' } : {}) });
      try {
        const source = await adapters.openFrameSource(video);
        try {
          signal.throwIfAborted();
          const { tracker, device } = await keeper.ready(size, signal);
          const watched = watchedSource(source, (picture) => watchers.forEach((watch) => watch(picture)));
          const options = { signal, onProgress: (progress: AppState['progress']) => set({ progress }) };
          const tracked = await trackVideo(watched, tracker, options);
          const { weights } = adapters;
          const { facts } = source;
          showRecording(
            trackedRecording({ origin, video, note, track: tracked, facts, setup, size, device, weights }),
            startLimits(get().limits.present),
          );
        } finally {
          source.close();
        }
      } catch (error) {
        if (!signal.aborted) {
          set({ screen: cameFrom });
          // After a failure of its own a tracker may never answer again; the next video gets a new one.
          if (!(error instanceof VideoProblem)) forgetTracker();
        }
        throw error;
      }
    });
  };

  const openSession = (text: string, parts: Parameters<typeof sessionRecording>[1]) => {
    const { recording: opened, limits } = sessionRecording(text, parts);
    showRecording(opened, startLimits(limits));
  };

  return {
    store,
    recording: () => recording,
    setTask(task) {
      set({ setup: { ...get().setup, task } });
      measureAgain();
    },
    setSide(side) {
      set({ setup: { ...get().setup, side } });
      measureAgain();
    },
    setBodyHeight(bodyHeightCm) {
      set({ setup: { ...get().setup, bodyHeightCm } });
      measureAgain();
    },
    setModel: (model) => set({ model }),
    async prepare() {
      if (get().device.state !== 'unknown') return;
      await keeper.ready(get().model).catch(() => undefined); // The device line tells of it.
    },
    openExample: () =>
      run('be opened', async (signal) => {
        set({ opening: 'example' });
        const { sessionText, video } = await adapters.fetchExample();
        signal.throwIfAborted();
        openSession(sessionText, { origin: 'example', fileName: video.name, video });
      }),
    openFile: (file) =>
      run('be opened', async (signal) => {
        set({ opening: 'file' });
        if (isSessionFile(file)) {
          const text = await file.text();
          signal.throwIfAborted();
          openSession(text, { origin: 'session', fileName: file.name, video: null });
          return;
        }
        chosenFile = null;
        // What was known of another recording's bends and beginning is not true of this one.
        const { task, side, bodyHeightCm } = get().setup;
        set({ chosen: null, setup: { task, side, bodyHeightCm } });
        const source = await adapters.openFrameSource(file);
        source.close();
        signal.throwIfAborted();
        chosenFile = file;
        set({ chosen: source.facts });
      }),
    openKept(sessionText, fileName, video) {
      void run('be opened', (signal) => {
        signal.throwIfAborted();
        const backTo = get().screen === 'inbox' ? 'inbox' : 'home';
        openSession(sessionText, { origin: 'session', fileName, video });
        set({ backTo });
        return Promise.resolve();
      });
    },
    attachVideo: (file) =>
      run('be attached', async (signal) => {
        set({ opening: 'file' });
        const source = await adapters.openFrameSource(file);
        source.close();
        signal.throwIfAborted();
        if (recording === null) return;
        checkSameVideo(source.facts, recording.videoFacts);
        recording = { ...recording, video: file };
        set({ revision: get().revision + 1 });
      }),
    async startTracking() {
      const { side, ...setup } = get().setup;
      if (chosenFile === null || side === null) return;
      await track(chosenFile, { ...setup, side }, 'video', '');
    },
    async trackAgain() {
      if (recording === null || recording.video === null) return;
      await track(recording.video, recording.measurement.setup, recording.origin, recording.note);
    },
    cancel() {
      if (get().screen !== 'tracking') return;
      job.abort();
      // Ends the work at once, and no answer that is still under way can slip into the next recording.
      forgetTracker();
      set({ screen: cameFrom, progress: null });
    },
    watchPictures(watcher) {
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },
    moveLimit(change) {
      const moved = moveLimits(get().limits, change);
      setLimits(moved, moved.movingFrom ?? moved.present);
    },
    endLimitMove: () => set({ limits: endMove(get().limits) }),
    undoLimits() {
      const { limits } = get();
      if (limits.past.length > 0 || limits.movingFrom !== null) setLimits(undoLimits(limits), limits.present);
    },
    resetLimits() {
      const { limits } = get();
      setLimits(endMove(moveLimits(limits, defaultLimits)), limits.present);
    },
    select: (selected) => set({ selected }),
    saveSession() {
      if (recording === null) return;
      const { videoFacts: video, model, note, track: observed, measurement } = recording;
      const createdAt = adapters.now();
      const limits = get().limits.present;
      const parts = { id: adapters.newId(), createdAt, note, limits, video, model, measurement };
      const document = buildSession({ ...parts, track: observed });
      adapters.saveFile(`overfoot-session-${dayOf(createdAt)}.json`, JSON.stringify(document));
    },
    saveTable(rows) {
      if (recording === null) return;
      const limits = get().limits.present;
      const text = rows === 'frames' ? framesCsv(recording) : repetitionsCsv({ ...recording, limits });
      adapters.saveFile(`overfoot-${rows}-${dayOf(adapters.now())}.csv`, text);
    },
    show: (screen) => {
      if (screen === 'review' && recording === null) return;
      set({ screen, problem: null, ...(screen === 'review' ? {} : { backTo: 'start' }) });
    },
    dismissProblem: () => set({ problem: null }),
    release() {
      if (get().screen !== 'tracking') forgetTracker();
    },
  };
}

/** For a file's name, which holds nothing else that could tell whose it is. */
function dayOf(date: Date): string {
  return date.toISOString().slice(0, 10);
}

function isSessionFile(file: File): boolean {
  const named = file.type === 'application/json' || file.name.toLowerCase().endsWith('.json');
  return named && file.size <= largestSessionBytes;
}
