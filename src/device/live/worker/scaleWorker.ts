import { expose, transfer } from 'comlink';
import { scaleNow, type ScaledPicture } from '../scaleNow';

/** Scales pictures off the main thread: one takes some milliseconds, which a page that draws should not lose. */
const worker = {
  /** @param frame  closed afterwards */
  async scale(frame: VideoFrame, maxHeightPx: number): Promise<ScaledPicture> {
    try {
      const scaled = await scaleNow(frame, frame.displayWidth, frame.displayHeight, maxHeightPx);
      return transfer(scaled, [scaled.picture]);
    } finally {
      frame.close();
    }
  },
};

export type ScaleWorker = typeof worker;

expose(worker);
