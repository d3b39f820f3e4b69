import { createStore, type StoreApi } from 'zustand/vanilla';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { defaultPoseModel, type PoseModel } from '#core/keypoints/poseModel';
import type { TimedSetup } from '#core/measurement/measureSet';
import { isProblem } from '#core/problem';
import type { CarefulTracker } from '#device/pose/poseTracker';
import type { CloserProgress } from '#device/tracking/lookCloser';
import type { TrackingProgress } from '#device/tracking/trackVideo';
import type { DeviceState } from './deviceState';
import type { LookOptions } from './lookAtRecording';
import type { ShownRecording } from './shownRecording';
import { createTrackerKeeper } from './trackerKeeper';
import type { TrackFileOptions, TrackingTools } from './trackFile';

type PictureWatcher = (picture: ImageBitmap) => void;

export interface TrackingState {
  model: PoseModel;
  device: DeviceState;
  /** Whether a video is being tracked; it has the page for itself meanwhile. */
  isTracking: boolean;
  /** Null while the model is made ready, and where nothing is tracked. */
  progress: TrackingProgress | null;
  /** How far the closer look has come; null where none is under way. */
  closer: CloserProgress | null;
}

/** Tracking videos with the page's one pose network. */
export interface Tracking {
  readonly store: StoreApi<TrackingState>;
  setModel(model: PoseModel): void;
  /** Starts the pose network ahead of its first use. */
  prepare(): Promise<void>;
  /**
   * Tracks and measures a video; another one that is under way is cancelled.
   *
   * @param options.signal  cancels it, as cancel() does
   * @returns null where it was cancelled
   * @throws Problem of a video; whatever the tracker throws
   */
  trackFile(
    video: File,
    setup: TimedSetup,
    options?: Pick<TrackFileOptions, 'origin' | 'note' | 'corrections'> & { signal?: AbortSignal },
  ): Promise<ShownRecording | null>;
  /**
   * Looks at a tracked recording more closely, while it is shown; cancelled like trackFile().
   *
   * @returns with all that was seen; null where it was cancelled
   * @throws Problem of a video; whatever the tracker throws
   */
  lookCloser(
    recording: ShownRecording,
    options: Pick<LookOptions, 'onSeen'> & { signal?: AbortSignal },
  ): Promise<KeypointTrack | null>;
  cancel(): void;
  /** Receives every picture while a video is tracked; returns a function that stops this. */
  watchPictures(watcher: PictureWatcher): () => void;
  /** Stops the pose network where it is idle, so that something else can have the device; it restarts when needed. */
  release(): void;
}

export interface TrackingAdapters extends Omit<TrackingTools, 'keeper'> {
  /** Starts a pose tracker; asked for again after one was stopped or failed. */
  createTracker: () => CarefulTracker;
}

/** Where nothing is under way. */
const idle = { isTracking: false, progress: null, closer: null } as const;

export function createTracking({ createTracker, ...tools }: TrackingAdapters): Tracking {
  const store = createStore<TrackingState>(() => ({
    model: defaultPoseModel,
    device: { state: 'unknown' },
    ...idle,
  }));
  const { getState: get, setState: set } = store;
  const keeper = createTrackerKeeper(createTracker, (device) => set({ device }));
  const watchers = new Set<PictureWatcher>();
  let job: AbortController | null = null;

  const forgetTracker = () => {
    keeper.discard();
    set({ device: { state: 'unknown' } });
  };
  const cancel = () => {
    if (job === null) return;
    job.abort();
    job = null;
    // Ends the work at once, and no answer that is still under way can slip into the next recording.
    forgetTracker();
    set(idle);
  };

  /** Runs a job with the one tracker, in place of any other; null where it was cancelled. */
  const runJob = async <Value>(
    outer: AbortSignal | undefined,
    begin: Partial<TrackingState>,
    work: (signal: AbortSignal) => Promise<Value>,
  ): Promise<Value | null> => {
    cancel();
    if (outer?.aborted === true) return null;
    const mine = (job = new AbortController());
    const { signal } = mine;
    const stop = () => {
      if (job === mine) cancel();
    };
    outer?.addEventListener('abort', stop);
    set(begin);
    try {
      const value = await work(signal);
      return signal.aborted ? null : value;
    } catch (error) {
      if (signal.aborted) return null;
      // After a failure of its own a tracker may never answer again; the next video gets a new one.
      if (!isProblem(error, 'video')) forgetTracker();
      throw error;
    } finally {
      outer?.removeEventListener('abort', stop);
      if (job === mine) {
        job = null;
        set(idle);
      }
    }
  };

  return {
    store,
    setModel: (model) => set({ model }),
    async prepare() {
      if (get().device.state !== 'unknown') return;
      await keeper.ready(get().model).catch(() => undefined); // The device line reports it.
    },
    trackFile: (video, setup, { signal: outer, ...options } = {}) =>
      runJob(outer, { isTracking: true, progress: null }, async (signal) => {
        const { trackFile } = await import('./trackFile'); // The measuring is large, and this the first use.
        const onProgress = (progress: TrackingProgress) => {
          if (!signal.aborted) set({ progress });
        };
        const onPicture = (picture: ImageBitmap) => watchers.forEach((watch) => watch(picture));
        const told = { ...options, size: get().model, signal, onProgress, onPicture };
        return trackFile(video, setup, { keeper, ...tools }, told);
      }),
    lookCloser: (recording, { signal: outer, ...options }) =>
      runJob(outer, { closer: { framesDone: 0, framesExpected: 0 } }, async (signal) => {
        const { lookAtRecording } = await import('./lookAtRecording');
        const onProgress = (closer: CloserProgress) => {
          if (!signal.aborted) set({ closer });
        };
        return lookAtRecording(recording, { keeper, ...tools }, { ...options, signal, onProgress });
      }),
    cancel,
    watchPictures(watcher) {
      watchers.add(watcher);
      return () => watchers.delete(watcher);
    },
    release() {
      if (job === null) forgetTracker();
    },
  };
}
