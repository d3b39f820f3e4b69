import { expose } from 'comlink';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { viewFromBends } from '#core/measurement/viewFromBends';

/** Reads bends in a worker: the first time takes longer than a page may freeze. */
const worker = {
  read: (track: KeypointTrack) => viewFromBends(track).view,
};

export type BendsWorker = typeof worker;

expose(worker);
