import { transfer, wrap } from 'comlink';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import { inTime } from '../inTime';
import type { CarefulTracker } from './poseTracker';
import type { PoseWorker } from './worker/poseWorker';

/**
 * No usable device takes longer for one picture; a worker that died silently does. The first one may wait for
 * the network to be made ready, ms.
 */
const patienceMs = { first: 60_000, later: 10_000 };

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
    // Its file is gone where a newer version was put on the server since this page was opened.
    const next = hasStarted ? '' : ' The page may be of an older version: reload it.';
    fail(new Error(`The pose worker could not start or has stopped${detail}.${next}`));
  });
  let hasStarted = false;
  let hasEstimated = false;
  let loadedModel: PoseModel | undefined;
  let device: Promise<PoseDevice> | undefined;

  /** The worker's answer, or the reason why there will be none. */
  const answer = <Value>(asked: Promise<Value>): Promise<Value> => Promise.race([asked, failure]);
  const answerInTime = <Value>(asked: Promise<Value>): Promise<Value> => {
    const withinMs = hasEstimated ? patienceMs.later : patienceMs.first;
    return inTime(answer(asked), withinMs, () => {
      const silence = new Error(`The pose worker gave no answer for ${withinMs / 1000} seconds.`);
      fail(silence);
      worker.terminate();
      return silence;
    });
  };

  return {
    load(model) {
      if (device === undefined || loadedModel !== model) {
        loadedModel = model;
        const loading = answer(remote.load(model, assetsUrl)).finally(() => (hasStarted = true));
        hasEstimated = false;
        device = loading;
        loading.catch(() => {
          if (device === loading) device = undefined;
        });
      }
      return device;
    },
    reset: () => answerInTime(remote.reset()),
    async estimate(picture, scale, timeMs) {
      const row = await answerInTime(remote.estimate(transfer(picture, [picture]), scale, timeMs));
      hasEstimated = true;
      return row;
    },
    async estimateCloser(picture, scale, timeMs) {
      const seen = await answerInTime(remote.estimateCloser(transfer(picture, [picture]), scale, timeMs));
      hasEstimated = true;
      return seen;
    },
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
