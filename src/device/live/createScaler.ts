import { transfer } from 'comlink';
import { workingHeightPx } from '../pose/workingHeightPx';
import { createWorkerBridge } from '../workerBridge';
import type { ScaledPicture } from './scaleNow';
import type { ScaleWorker } from './worker/scaleWorker';

/** Scales pictures to the height that the pose network works with, in a separate worker. */
export interface Scaler {
  /**
   * @param frame  taken over and closed
   * @returns null where the scaler was closed meanwhile
   */
  scale(frame: VideoFrame): Promise<ScaledPicture | null>;
  close(): void;
}

export function createScaler(): Scaler {
  const bridge = createWorkerBridge<ScaleWorker>(
    new Worker(new URL('./worker/scaleWorker.ts', import.meta.url), { type: 'module' }),
    () => new Error('Scaling pictures could not start or has stopped.'),
  );
  let isClosed = false;
  return {
    async scale(frame) {
      try {
        return await bridge.ask((remote) => remote.scale(transfer(frame, [frame]), workingHeightPx));
      } catch (error) {
        if (isClosed) return null;
        throw error;
      } finally {
        frame.close(); // Where it never reached the worker.
      }
    },
    close() {
      isClosed = true;
      bridge.end();
    },
  };
}
