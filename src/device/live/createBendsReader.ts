import { wrap } from 'comlink';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';
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
  const worker = new Worker(new URL('./worker/bendsWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<BendsWorker>(worker);
  const failure = new Promise<null>((resolve) => worker.addEventListener('error', () => resolve(null)));
  return {
    read: (track) =>
      Promise.race([remote.read(track), failure])
        .catch(() => null)
        .finally(() => worker.terminate()),
  };
}
