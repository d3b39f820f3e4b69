import { transfer, wrap } from 'comlink';
import type { PoseDevice, PoseModel } from '../keypoints/poseModel';
import type { PoseTracker } from './poseTracker';
import type { PoseWorker } from './worker/poseWorker';

/** The pose tracker's worker, with the loop that the benchmark compares against. */
export interface WorkerPoseTracker extends PoseTracker {
  timeBareLoop(pictures: ImageBitmap[]): Promise<number>;
}

/**
 * A pose tracker in a worker of its own, so that the page stays responsive.
 *
 * @param assetsUrl  folder URL with `models/` and `wasm/`, with a slash at its end
 */
export function createPoseTracker(assetsUrl: string): WorkerPoseTracker {
  const worker = new Worker(new URL('./worker/poseWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<PoseWorker>(worker);
  const failure = new Promise<never>((_, reject) => {
    worker.addEventListener('error', (event) =>
      reject(new Error(event.message || 'The pose worker could not start.')),
    );
  });
  failure.catch(() => undefined);
  let loadedModel: PoseModel | undefined;
  let device: Promise<PoseDevice> | undefined;

  return {
    load(model) {
      if (device === undefined || loadedModel !== model) {
        loadedModel = model;
        device = Promise.race([remote.load(model, assetsUrl), failure]);
        device.catch(() => (device = undefined));
      }
      return device;
    },
    reset: () => remote.reset(),
    estimate: (picture, scale, timeMs) =>
      Promise.race([remote.estimate(transfer(picture, [picture]), scale, timeMs), failure]),
    timeBareLoop: (pictures) => remote.timeBareLoop(transfer(pictures, pictures)),
    close: () => worker.terminate(),
  };
}
