import { expose, transfer } from 'comlink';
import { keypointCount } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { PoseWorker } from '#device/pose/worker/poseWorker';
import { readNumber } from './pictureNumber';
import type { Replayed } from './replayJoints';

/** Put in front of this script by replayJoints. */
declare const replayed: Replayed;

/** Stands in for the pose worker where the network is not what is tested: gives joints that are known already. */
const worker: PoseWorker = {
  load: () => Promise.resolve({ backend: 'wasm', threads: 1 }),
  reset: () => Promise.resolve(),
  async estimate(picture, _, timeMs) {
    const row = rowOf(readNumber(picture) ?? frameAt(timeMs));
    picture.close();
    await new Promise((resolve) => setTimeout(resolve, replayed.tookMs));
    return row === null ? null : transfer(row, [row.buffer]);
  },
  async estimateCloser(picture, scale, timeMs) {
    return { row: await worker.estimate(picture, scale, timeMs), closer: null };
  },
  loadSecond: () => Promise.resolve(),
  lookCloser(picture) {
    picture.close();
    return Promise.resolve(null);
  },
  timeBareLoop: () => Promise.resolve(0),
  countTensors: () => 0,
};

function frameAt(timeMs: number): number {
  return Math.max(
    0,
    replayed.timesMs.findLastIndex((one) => one <= timeMs + 1),
  );
}

/** Null where nobody was seen. */
function rowOf(frame: number): KeypointRow | null {
  const from = frame * keypointCount;
  const row = new Float32Array(keypointCount * 3);
  for (let point = 0; point < keypointCount; point++) {
    row[point * 3] = replayed.xPx[from + point]!;
    row[point * 3 + 1] = replayed.yPx[from + point]!;
    row[point * 3 + 2] = replayed.score[from + point]!;
  }
  return row.some((value) => value !== 0) ? row : null;
}

expose(worker);
