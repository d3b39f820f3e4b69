import * as poseDetection from '@tensorflow-models/pose-detection';
import * as tf from '@tensorflow/tfjs';
import { expose, transfer } from 'comlink';
import { createQueue } from '#core/createQueue';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import { pickBackend } from './pickBackend';

let detector: poseDetection.PoseDetector | undefined;
let device: Promise<PoseDevice> | undefined;
/** Messages may arrive in the middle of it, and the detector does one picture at a time. */
const jobs = createQueue();

const worker = {
  /** Starts the backend and loads a model; a second call changes the model. */
  load(model: PoseModel, assetsUrl: string): Promise<PoseDevice> {
    return jobs.add(async () => {
      device ??= pickBackend(assetsUrl);
      const started = await device;
      detector?.dispose();
      detector = undefined;
      detector = await createDetector(model, assetsUrl);
      return started;
    });
  },

  /** Forgets where the person was, so that the next frame is searched from scratch. */
  reset(): Promise<void> {
    return jobs.add(async () => loaded().reset());
  },

  /**
   * Points of the one person in a picture.
   *
   * @param picture  closed afterwards
   * @param scale  px of the displayed video for one px of this picture
   * @returns interleaved x, y (px of the displayed video), score; null where no person is found
   */
  estimate(picture: ImageBitmap, scale: number, timeMs: number): Promise<KeypointRow | null> {
    return jobs.add(async () => {
      try {
        const row = await estimateRow(picture, scale, timeMs);
        return row === null ? null : transfer(row, [row.buffer]);
      } finally {
        picture.close();
      }
    });
  },

  /** Seconds that the detector alone takes for pictures already loaded; for the benchmark. */
  timeBareLoop(pictures: ImageBitmap[]): Promise<number> {
    return jobs.add(async () => {
      loaded().reset();
      const start = performance.now();
      for (const [index, picture] of pictures.entries()) await estimateRow(picture, 1, index);
      const seconds = (performance.now() - start) / 1000;
      pictures.forEach((picture) => picture.close());
      return seconds;
    });
  },

  countTensors: (): number => tf.memory().numTensors,
};

/** @throws Error  with a sentence where a file of the model can't be loaded */
async function createDetector(model: PoseModel, assetsUrl: string): Promise<poseDetection.PoseDetector> {
  try {
    return await poseDetection.createDetector(poseDetection.SupportedModels.BlazePose, {
      runtime: 'tfjs',
      modelType: model,
      // The library's own smoothing depends on how fast frames come; the raw points are kept instead.
      enableSmoothing: false,
      detectorModelUrl: `${assetsUrl}models/blazepose-detector.json`,
      landmarkModelUrl: `${assetsUrl}models/blazepose-${model}.json`,
    });
  } catch (error) {
    const detail = error instanceof Error ? error.message : 'no reason given';
    throw new Error(`The pose network's files could not be loaded (${detail}). Check the connection.`, {
      cause: error,
    });
  }
}

function loaded(): poseDetection.PoseDetector {
  if (detector === undefined) throw new Error('A model must be loaded before the first picture.');
  return detector;
}

async function estimateRow(picture: ImageBitmap, scale: number, timeMs: number): Promise<KeypointRow | null> {
  const [pose] = await loaded().estimatePoses(picture, { maxPoses: 1, flipHorizontal: false }, timeMs);
  if (pose === undefined) return null;
  const row = new Float32Array(keypointCount * 3);
  pose.keypoints.forEach(({ x, y, score }, point) => {
    row[point * 3] = x * scale;
    row[point * 3 + 1] = y * scale;
    row[point * 3 + 2] = score ?? 0;
  });
  return row;
}

export type PoseWorker = typeof worker;

expose(worker);
