import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { viewFromBends } from '#core/measurement/viewFromBends';

const scope = self as unknown as DedicatedWorkerGlobalScope;

/** Reads bends in a worker: the first time takes longer than a page may freeze. */
scope.onmessage = ({ data }: MessageEvent<KeypointTrack>) => scope.postMessage(viewFromBends(data).view);
