/** The three sizes of the pose network, fastest first. */
export const poseModels = ['lite', 'full', 'heavy'] as const;
export type PoseModel = (typeof poseModels)[number];

export const defaultPoseModel: PoseModel = 'full';

/** Where the network runs on this device. */
export interface PoseDevice {
  backend: 'webgpu' | 'webgl' | 'wasm';
  /** Threads that the wasm backend really started; 1 for the others. */
  threads: number;
}
