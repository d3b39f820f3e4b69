import { createStore, type StoreApi } from 'zustand/vanilla';
import { defaultPoseModel, type PoseModel } from '#core/keypoints/poseModel';
import { isProblem } from '#core/problem';
import type { OpenFrameSource } from '#device/frames/frameSource';
import type { CarefulTracker } from '#device/pose/poseTracker';
import type { Repository } from '#device/storage/repository';
import { explainProblem } from '#shell/explainProblem';
import { measureFromVideo, type MeasuringProgress } from '#shell/tracking/measureFromVideo';
import { message } from '#words/messages/message';

export interface BackgroundState {
  /** Recordings whose joints are still those tracked live, in the order in which they are measured again. */
  waiting: readonly string[];
  /** The one that is tracked now; progress is null while the model is made ready. */
  current: { id: string; progress: MeasuringProgress | null } | null;
  isPaused: boolean;
  /** Recordings measured again since the page was opened. */
  done: readonly string[];
  /** What went wrong since the page was opened, a sentence per recording. Such a recording keeps its joints. */
  problems: Readonly<Record<string, string>>;
}

/** Measures recordings again from their stored videos, one at a time, while nothing else needs the device. */
export interface BackgroundMeasuring {
  readonly store: StoreApi<BackgroundState>;
  /** Looks for waiting recordings and begins; to be called when the page is opened and after a set was saved. */
  look(): void;
  /** Stops at once, as for a live recording; resolves when the device is free. What was tracked is kept. */
  pause(): Promise<void>;
  /** Continues where it stopped. */
  resume(): void;
  /** Cancels it for one recording, for good: it keeps the joints tracked live. */
  cancel(id: string): Promise<void>;
  /** Requests it again after it was cancelled or failed. */
  retry(id: string): Promise<void>;
  /** Resolves once nothing is measured any more: all is done, or it was paused. */
  whenIdle(): Promise<void>;
  /** Ends it; what was tracked is kept. */
  close(): Promise<void>;
}

export interface BackgroundParts {
  repository: Repository;
  openFrameSource: OpenFrameSource;
  createTracker: () => CarefulTracker;
  /** Package and version that the network's weights come from. */
  weights: string;
  model?: PoseModel;
}

export function createBackgroundMeasuring({
  repository,
  openFrameSource,
  createTracker,
  weights,
  model: size = defaultPoseModel,
}: BackgroundParts): BackgroundMeasuring {
  const store = createStore<BackgroundState>(() => ({
    waiting: [],
    current: null,
    isPaused: false,
    done: [],
    problems: {},
  }));
  const { getState: get, setState: set } = store;
  let tracker: CarefulTracker | null = null;
  let stopper = new AbortController();
  let running: Promise<void> | null = null;
  let isLookDue = false;
  let isClosed = false;
  const calledOff = new Set<string>();

  const freeTracker = () => {
    tracker?.close();
    tracker = null;
  };
  const tell = (id: string, sentence: string) => set({ problems: { ...get().problems, [id]: sentence } });

  const nextWaiting = async (): Promise<string | undefined> => {
    const { found } = await repository.recordings.list();
    const waiting = found
      .filter(({ fromVideo }) => fromVideo === 'waiting')
      .map(({ id }) => id)
      .filter((id) => !calledOff.has(id) && get().problems[id] === undefined)
      .reverse(); // Oldest first.
    set({ waiting });
    return waiting[0];
  };

  const measureAgain = async (id: string, signal: AbortSignal) => {
    const video = (await repository.recordings.findHead(id))?.facts.video ?? null;
    const file = video === null ? null : await repository.videos.read(video);
    if (file === null) {
      tell(id, message('trouble.no-video-left'));
      return repository.recordings.setFromVideo(id, 'impossible');
    }
    const source = await openFrameSource(file);
    try {
      signal.throwIfAborted();
      tracker ??= createTracker();
      const { backend } = await tracker.load(size);
      signal.throwIfAborted();
      const model = { name: 'BlazePose', size, weights, backend } as const;
      const onProgress = (progress: MeasuringProgress) => set({ current: { id, progress } });
      const options = { signal, onProgress };
      const result = await measureFromVideo(id, source, tracker, model, repository, options);
      if (result === 'replaced') set({ done: [...get().done, id] });
      if (result !== 'video-too-short') return;
      tell(id, message('trouble.video-short'));
      await repository.recordings.setFromVideo(id, 'impossible');
    } finally {
      source.close();
    }
  };

  /** A recording that fails does not hold up the next one. */
  const tryOne = async (id: string, signal: AbortSignal) => {
    set({ current: { id, progress: null } });
    try {
      await measureAgain(id, signal);
    } catch (error) {
      if (signal.aborted) return;
      tell(id, explainProblem(error, 'measure').sentence);
      if (isProblem(error, 'video')) await repository.recordings.setFromVideo(id, 'impossible');
      else freeTracker(); // After a failure of its own it may never answer again.
    } finally {
      set({ current: null });
    }
  };

  const work = async (signal: AbortSignal) => {
    isLookDue = false; // Where no turn is available, do not keep asking.
    const endTurn = await repository.takeTurn('measuring again', signal);
    try {
      while (!signal.aborted) {
        isLookDue = false;
        const id = await nextWaiting();
        if (id === undefined) break;
        if (!signal.aborted) await tryOne(id, signal);
      }
    } finally {
      freeTracker();
      endTurn();
    }
  };
  const mayStart = () => running === null && !get().isPaused && !isClosed;
  const start = () => {
    if (!mayStart()) return;
    stopper = new AbortController();
    running = work(stopper.signal)
      .catch(() => undefined) // Storage that can't be listed is reported where sessions are shown.
      .finally(() => {
        running = null;
        if (isLookDue) start();
      });
  };
  const halt = async () => {
    stopper.abort(new Error('Measuring again was stopped.'));
    freeTracker();
    await running;
  };
  const look = () => {
    isLookDue = true;
    if (mayStart()) start();
    else if (!isClosed) void nextWaiting().catch(() => undefined); // What waits is reported at once.
  };

  return {
    store,
    look,
    async pause() {
      set({ isPaused: true });
      await halt();
    },
    resume() {
      set({ isPaused: false });
      look();
    },
    async cancel(id) {
      calledOff.add(id);
      if (get().current?.id === id) await halt();
      await repository.recordings.setFromVideo(id, 'declined');
      look();
    },
    async retry(id) {
      await repository.recordings.setFromVideo(id, 'waiting');
      calledOff.delete(id);
      set({ problems: Object.fromEntries(Object.entries(get().problems).filter(([key]) => key !== id)) });
      look();
    },
    async whenIdle() {
      while (running !== null) await running;
    },
    async close() {
      isClosed = true;
      await halt();
    },
  };
}
