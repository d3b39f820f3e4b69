import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Setup } from '#core/measurement/measurement';

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
  let hasFailed = false;
  worker.onerror = () => (hasFailed = true);
  return {
    async read(track) {
      const view = await new Promise<Bends | null>((resolve) => {
        if (hasFailed) return resolve(null);
        worker.onmessage = ({ data }: MessageEvent<Bends | null>) => resolve(data);
        worker.onerror = () => resolve(null);
        worker.postMessage(track);
      });
      worker.terminate();
      return view;
    },
  };
}
