import type { PoseDevice } from '#core/keypoints/poseModel';

/** Where the network ran: 'wasm, 2 threads'. */
export function deviceWords({ backend, threads }: PoseDevice): string {
  return `${backend}, ${threads} ${threads === 1 ? 'thread' : 'threads'}`;
}
