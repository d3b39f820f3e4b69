import { transfer, wrap } from 'comlink';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { CarefulTracker } from './poseTracker';
import type { PoseWorker } from './worker/poseWorker';

/** No usable device takes longer for one picture; a worker that died silently does, ms. */
const patienceMs = 60_000;

/** The pose tracker's worker, with what only the benchmark needs. */
export interface WorkerPoseTracker extends CarefulTracker {
  /** Seconds that the network alone takes for pictures already loaded, one after the other. */
  timeBareLoop(pictures: ImageBitmap[]): Promise<number>;
  /** Tensors held by the worker: must not grow from one recording to the next. */
  countTensors(): Promise<number>;
}

/**
 * A pose tracker in a separate worker, so that the page stays responsive.
 *
 * @param assetsUrl  folder URL with `models/` and `wasm/`, with a slash at its end
 */
export function createPoseTracker(assetsUrl: string): WorkerPoseTracker {
  const worker = new Worker(new URL('./worker/poseWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<PoseWorker>(worker);
  let fail: (reason: Error) => void = () => undefined;
  const failure = new Promise<never>((_, reject) => (fail = reject));
  failure.catch(() => undefined);
  worker.addEventListener('error', (event) => {
    const detail = event.message ? ` (${event.message})` : '';
    fail(new Error(`The pose worker could not start or has stopped${detail}.`));
  });
  let loadedModel: PoseModel | undefined;
  let device: Promise<PoseDevice> | undefined;

  /** The worker's answer, or the reason why there will be none. */
  const answer = <Value>(asked: Promise<Value>): Promise<Value> => Promise.race([asked, failure]);
  const answerInTime = async <Value>(asked: Promise<Value>): Promise<Value> => {
    const timer = setTimeout(() => {
      fail(new Error(`The pose worker gave no answer for ${patienceMs / 1000} seconds.`));
      worker.terminate();
    }, patienceMs);
    return answer(asked).finally(() => clearTimeout(timer));
  };

  return {
    load(model) {
      if (device === undefined || loadedModel !== model) {
        loadedModel = model;
        const loading = answer(remote.load(model, assetsUrl));
        device = loading;
        loading.catch(() => {
          if (device === loading) device = undefined;
        });
      }
      return device;
    },
    reset: () => answerInTime(remote.reset()),
    estimate: (picture, scale, timeMs) =>
      answerInTime(remote.estimate(transfer(picture, [picture]), scale, timeMs)),
    loadSecond: () => answer(remote.loadSecond(assetsUrl)),
    lookCloser: (picture, scale, timeMs, usual, isAlone) =>
      answerInTime(remote.lookCloser(transfer(picture, [picture]), scale, timeMs, usual, isAlone)),
    timeBareLoop: (pictures) => answer(remote.timeBareLoop(transfer(pictures, pictures))),
    countTensors: () => answer(remote.countTensors()),
    close() {
      fail(new Error('The pose tracker was closed.'));
      worker.terminate();
    },
  };
}
