import * as poseDetection from '@tensorflow-models/pose-detection';
import * as tf from '@tensorflow/tfjs';
import { expose, transfer } from 'comlink';
import { mirrorRow } from '#core/correction/mirrorTrack';
import { createQueue } from '#core/createQueue';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { CloserFrame } from '#core/looks/closerLook';
import type { CarefulEstimate } from '../poseTracker';
import { checkedModel, OtherWeights } from './checkedModel';
import { pickBackend } from './pickBackend';
import { loadSecondNetwork, type SecondNetwork } from './secondNetwork';

let detector: poseDetection.PoseDetector | undefined;
let device: Promise<PoseDevice> | undefined;
let second: Promise<SecondNetwork> | undefined;
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

  /**
   * Points of the one person in a picture, and what its mirror image and the second network, which must be loaded, show.
   *
   * @param picture  closed afterwards
   * @param scale  px of the displayed video for one px of this picture
   */
  estimateCloser(picture: ImageBitmap, scale: number, timeMs: number): Promise<CarefulEstimate> {
    return jobs.add(async () => {
      const mirrorImage = mirrored(picture);
      try {
        const row = await estimateRow(picture, scale, timeMs);
        const looks = row === null ? null : (await loadedSecond()).look(picture, scale, row);
        if (looks === null) return { row, closer: null };
        const detector = loaded() as unknown as WithRegion;
        const region = detector.regionOfInterest;
        detector.regionOfInterest = mirrorRegion(region);
        const found = await estimateRow(mirrorImage, scale, timeMs);
        // The next picture is not a mirror image.
        detector.regionOfInterest = region;
        return { row, closer: { mirrored: mirroredBack(found, picture, scale), ...looks } };
      } finally {
        picture.close();
        mirrorImage.close();
      }
    });
  },

  /** Loads the second network, once. */
  loadSecond(assetsUrl: string): Promise<void> {
    return jobs.add(async () => {
      second ??= loadSecondNetwork(assetsUrl);
      try {
        await second;
      } catch (error) {
        second = undefined;
        throw filesProblem(error);
      }
    });
  },

  /**
   * Looks at a picture again: in its mirror image, and with the second network.
   *
   * @param picture  closed afterwards
   * @param usual  what estimate() found in the same picture
   * @param isAlone  where the picture before was of another moment, so that the person is searched for again
   * @returns null where the second network has nothing to go by
   */
  lookCloser(
    picture: ImageBitmap,
    scale: number,
    timeMs: number,
    usual: KeypointRow,
    isAlone: boolean,
  ): Promise<Omit<CloserFrame, 'frame'> | null> {
    return jobs.add(async () => {
      const mirrorImage = mirrored(picture);
      try {
        const network = await loadedSecond();
        if (isAlone) {
          // Found in the whole picture first, then read from its own region, as in any later picture.
          loaded().reset();
          await estimateRow(mirrorImage, scale, timeMs - 1);
        }
        const found = await estimateRow(mirrorImage, scale, timeMs);
        const looks = network.look(picture, scale, usual);
        return looks === null ? null : { mirrored: mirroredBack(found, picture, scale), ...looks };
      } finally {
        picture.close();
        mirrorImage.close();
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
      detectorModelUrl: checkedModel(assetsUrl, 'blazepose-detector'),
      landmarkModelUrl: checkedModel(assetsUrl, `blazepose-${model}`),
    });
  } catch (error) {
    throw filesProblem(error);
  }
}

function filesProblem(error: unknown): Error {
  if (error instanceof OtherWeights) return error;
  const detail = error instanceof Error ? error.message : 'no reason given';
  const isMemory = error instanceof RangeError || /memory/i.test(detail);
  const next = isMemory
    ? 'The device has too little memory left: close other pages and programs, then try again.'
    : 'Check the connection.';
  return new Error(`The pose network’s files could not be loaded (${detail}). ${next}`, { cause: error });
}

function mirrored(picture: ImageBitmap): ImageBitmap {
  const canvas = new OffscreenCanvas(picture.width, picture.height);
  const context = canvas.getContext('2d', { alpha: false })!;
  context.setTransform(-1, 0, 0, 1, picture.width, 0);
  context.drawImage(picture, 0, 0);
  return canvas.transferToImageBitmap();
}

/** Where the detector will look for the person in the next picture, as shares of it and radians; null: everywhere. */
interface WithRegion {
  regionOfInterest: {
    xCenter: number;
    yCenter: number;
    width: number;
    height: number;
    rotation?: number;
  } | null;
}

function mirrorRegion(region: WithRegion['regionOfInterest']): WithRegion['regionOfInterest'] {
  if (region === null) return null;
  const { xCenter, rotation = 0 } = region;
  return { ...region, xCenter: 1 - xCenter, rotation: -rotation };
}

/** What was found in a mirror image, as points of the picture. */
function mirroredBack(found: KeypointRow | null, { width }: ImageBitmap, scale: number): KeypointRow | null {
  return found === null ? null : mirrorRow(found, width * scale);
}

async function loadedSecond(): Promise<SecondNetwork> {
  if (second === undefined) throw new Error('The second network must be loaded first.');
  return second;
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
