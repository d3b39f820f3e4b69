import { createStore, type StoreApi } from 'zustand/vanilla';
import { defaultPoseModel, type PoseModel } from '#core/keypoints/poseModel';
import type { TimedSetup } from '#core/measurement/measureSet';
import { isProblem } from '#core/problem';
import type { PoseTracker } from '#device/pose/poseTracker';
import type { TrackingProgress } from '#device/tracking/trackVideo';
import type { DeviceState } from './deviceState';
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
  cancel(): void;
  /** Receives every picture while a video is tracked; returns a function that stops this. */
  watchPictures(watcher: PictureWatcher): () => void;
  /** Stops the pose network where it is idle, so that something else can have the device; it restarts when needed. */
  release(): void;
}

export interface TrackingAdapters extends Omit<TrackingTools, 'keeper'> {
  /** Starts a pose tracker; asked for again after one was stopped or failed. */
  createTracker: () => PoseTracker;
}

export function createTracking({ createTracker, ...tools }: TrackingAdapters): Tracking {
  const store = createStore<TrackingState>(() => ({
    model: defaultPoseModel,
    device: { state: 'unknown' },
    isTracking: false,
    progress: null,
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
    set({ isTracking: false, progress: null });
  };

  return {
    store,
    setModel: (model) => set({ model }),
    async prepare() {
      if (get().device.state !== 'unknown') return;
      await keeper.ready(get().model).catch(() => undefined); // The device line reports it.
    },
    async trackFile(video, setup, { signal: outer, ...options } = {}) {
      cancel();
      if (outer?.aborted === true) return null;
      const mine = (job = new AbortController());
      const { signal } = mine;
      const stop = () => {
        if (job === mine) cancel();
      };
      outer?.addEventListener('abort', stop);
      set({ isTracking: true, progress: null });
      try {
        const { trackFile } = await import('./trackFile'); // The measuring is large, and this the first use.
        const recording = await trackFile(
          video,
          setup,
          { keeper, ...tools },
          {
            ...options,
            size: get().model,
            signal,
            onProgress: (progress) => {
              if (!signal.aborted) set({ progress });
            },
            onPicture: (picture) => watchers.forEach((watch) => watch(picture)),
          },
        );
        return signal.aborted ? null : recording;
      } catch (error) {
        if (signal.aborted) return null;
        // After a failure of its own a tracker may never answer again; the next video gets a new one.
        if (!isProblem(error, 'video')) forgetTracker();
        throw error;
      } finally {
        outer?.removeEventListener('abort', stop);
        if (job === mine) {
          job = null;
          set({ isTracking: false, progress: null });
        }
      }
    },
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
