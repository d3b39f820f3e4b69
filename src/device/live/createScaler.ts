import { transfer, wrap } from 'comlink';
import { workingHeightPx } from '../pose/workingHeightPx';
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
  const worker = new Worker(new URL('./worker/scaleWorker.ts', import.meta.url), { type: 'module' });
  const remote = wrap<ScaleWorker>(worker);
  let fail: (reason: Error) => void = () => undefined;
  let close: () => void = () => undefined;
  const failure = new Promise<never>((_, reject) => (fail = reject));
  const closed = new Promise<null>((resolve) => (close = () => resolve(null)));
  failure.catch(() => undefined);
  worker.addEventListener('error', () => fail(new Error('Scaling pictures could not start or has stopped.')));
  return {
    scale: (frame) =>
      Promise.race([remote.scale(transfer(frame, [frame]), workingHeightPx), failure, closed]),
    close() {
      close();
      worker.terminate();
    },
  };
}
