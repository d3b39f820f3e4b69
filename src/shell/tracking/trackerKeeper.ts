import { createQueue } from '#core/createQueue';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { CarefulTracker } from '#device/pose/poseTracker';
import type { DeviceState } from './deviceState';

/** Owns the one pose tracker: starts it when first needed, loads one model at a time, replaces it when it failed. */
export interface TrackerKeeper {
  /**
   * A tracker with the model ready.
   *
   * @throws the signal's reason when cancelled; whatever the tracker throws
   */
  ready(model: PoseModel, signal?: AbortSignal): Promise<{ tracker: CarefulTracker; device: PoseDevice }>;
  /** Stops the tracker, whatever it is doing; the next call of ready() starts another. */
  discard(): void;
}

export function createTrackerKeeper(
  createTracker: () => CarefulTracker,
  onDevice: (device: DeviceState) => void,
): TrackerKeeper {
  let tracker: CarefulTracker | null = null;
  // Loads wait for each other: two at once could end with the model that was asked for first.
  let loads = createQueue();

  const discard = () => {
    tracker?.close();
    tracker = null;
    loads = createQueue();
  };

  const load = async (current: CarefulTracker, model: PoseModel) => {
    try {
      const device = await current.load(model);
      if (tracker === current) onDevice({ state: 'ready', device, model });
      return { tracker: current, device };
    } catch (error) {
      if (tracker === current) {
        discard();
        onDevice({ state: 'failed', sentence: error instanceof Error ? error.message : 'no reason given' });
      }
      throw error;
    }
  };

  return {
    async ready(model, signal) {
      if (tracker === null) {
        tracker = createTracker();
        onDevice({ state: 'starting' });
      }
      const current = tracker;
      const loaded = loads.add(() => load(current, model));
      return signal === undefined ? loaded : Promise.race([loaded, rejectOnAbort(signal)]);
    },
    discard,
  };
}

function rejectOnAbort(signal: AbortSignal): Promise<never> {
  return new Promise((_, reject) => {
    if (signal.aborted) reject(signal.reason as Error);
    signal.addEventListener('abort', () => reject(signal.reason as Error), { once: true });
  });
}
