import { transfer, type Remote } from 'comlink';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import { inTime } from '../inTime';
import { createWorkerBridge } from '../workerBridge';
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
  const bridge = createWorkerBridge<PoseWorker>(
    new Worker(new URL('./worker/poseWorker.ts', import.meta.url), { type: 'module' }),
    (message) => {
      const detail = message ? ` (${message})` : '';
      // Its file is gone where a newer version was put on the server since this page was opened.
      const next = hasStarted ? '' : ' The page may be of an older version: reload it.';
      return new Error(`The pose worker could not start or has stopped${detail}.${next}`);
    },
  );
  let hasStarted = false;
  let hasEstimated = false;
  let loadedModel: PoseModel | undefined;
  let device: Promise<PoseDevice> | undefined;

  const askInTime = <Value>(call: (remote: Remote<PoseWorker>) => Promise<Value>): Promise<Value> => {
    const withinMs = hasEstimated ? patienceMs.later : patienceMs.first;
    return inTime(bridge.ask(call), withinMs, () => {
      const silence = new Error(`The pose worker gave no answer for ${withinMs / 1000} seconds.`);
      bridge.end(silence);
      return silence;
    });
  };
  /** Hands a picture over with what is asked. */
  const look = async <Value>(
    picture: ImageBitmap,
    call: (remote: Remote<PoseWorker>, picture: ImageBitmap) => Promise<Value>,
  ): Promise<Value> => {
    try {
      return await askInTime((remote) => call(remote, transfer(picture, [picture])));
    } finally {
      picture.close(); // Where it never reached the worker.
    }
  };

  return {
    load(model) {
      if (device === undefined || loadedModel !== model) {
        loadedModel = model;
        const loading = bridge
          .ask((remote) => remote.load(model, assetsUrl))
          .finally(() => (hasStarted = true));
        hasEstimated = false;
        device = loading;
        loading.catch(() => {
          if (device === loading) device = undefined;
        });
      }
      return device;
    },
    reset: () => askInTime((remote) => remote.reset()),
    async estimate(picture, scale, timeMs) {
      const row = await look(picture, (remote, given) => remote.estimate(given, scale, timeMs));
      hasEstimated = true;
      return row;
    },
    async estimateCloser(picture, scale, timeMs) {
      const seen = await look(picture, (remote, given) => remote.estimateCloser(given, scale, timeMs));
      hasEstimated = true;
      return seen;
    },
    loadSecond: () => bridge.ask((remote) => remote.loadSecond(assetsUrl)),
    lookCloser: (picture, scale, timeMs, usual, isAlone) =>
      look(picture, (remote, given) => remote.lookCloser(given, scale, timeMs, usual, isAlone)),
    timeBareLoop: (pictures) => bridge.ask((remote) => remote.timeBareLoop(transfer(pictures, pictures))),
    countTensors: () => bridge.ask((remote) => remote.countTensors()),
    close: () => bridge.end(new Error('The pose tracker was closed.')),
  };
}
