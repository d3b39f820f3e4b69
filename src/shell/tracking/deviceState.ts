import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';

/** Where the pose network runs, as far as it is known. */
export type DeviceState =
  | { state: 'unknown' }
  | { state: 'starting' }
  | { state: 'ready'; device: PoseDevice; model: PoseModel }
  | { state: 'failed'; sentence: string };
