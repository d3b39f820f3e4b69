import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';
import { createWorkerBridge } from '../workerBridge';
import type { BendsWorker } from './worker/bendsWorker';

/** How the body stood to the camera in bends before the set. */
export type Bends = NonNullable<Setup['bends']>;

/** Reads bends off the main thread. */
export interface BendsReader {
  /** Null where nothing can be inferred from the bends, or they can't be read. Never rejects; ends the reader. */
  read(track: KeypointTrack): Promise<Bends | null>;
}

/** Starts a worker at once, so that it is ready when the bends are over. */
export function createBendsReader(): BendsReader {
  const bridge = createWorkerBridge<BendsWorker>(
    new Worker(new URL('./worker/bendsWorker.ts', import.meta.url), { type: 'module' }),
    () => new Error('Reading bends could not start or has stopped.'),
  );
  return {
    read: (track) =>
      bridge
        .ask((remote) => remote.read(track))
        .catch(() => null)
        .finally(() => bridge.end()),
  };
}
