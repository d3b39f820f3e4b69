import type { Frame, FrameSource, VideoFacts } from './frameSource';
import { happens } from './happens';
import { scaledSize } from './scaledSize';
import { stepTo } from './stepTo';

/** After this many frames in a row that the browser did not report as shown, it is no longer asked. */
const mostUnsure = 3;

/**
 * Frames shown by a video element that is stepped from time to time: slower, for browsers that can't decode the file
 * otherwise.
 *
 * @param timesMs  presentation times of the frames according to the container
 * @returns null where the video element can't show the file either
 */
export async function createSteppedSource(
  file: File,
  facts: VideoFacts,
  timesMs: readonly number[],
): Promise<FrameSource | null> {
  const video = document.createElement('video');
  video.muted = true;
  video.preload = 'auto';
  video.src = URL.createObjectURL(file);
  const close = () => {
    URL.revokeObjectURL(video.src);
    video.removeAttribute('src');
    video.load();
  };
  if (!(await happens(video, 'loadeddata')) || video.videoWidth === 0) {
    close();
    return null;
  }
  const shown = { ...facts, widthPx: video.videoWidth, heightPx: video.videoHeight };
  return {
    facts: shown,
    async *frames(maxHeightPx, afterMs = -1, isWanted = () => true) {
      const { width, height } = scaledSize(shown.widthPx, shown.heightPx, maxHeightPx);
      let unsure = 0;
      for (const [index, timeMs] of timesMs.entries()) {
        const nextMs = timesMs[index + 1] ?? timeMs + 20;
        if (nextMs <= timeMs || timeMs <= afterMs || !isWanted(timeMs)) continue;
        const outcome = await stepTo(video, timeMs, nextMs, unsure < mostUnsure);
        if (outcome === 'failed') return;
        if (unsure < mostUnsure) unsure = outcome === 'unsure' ? unsure + 1 : 0;
        const picture = await createImageBitmap(video, {
          resizeWidth: width,
          resizeHeight: height,
          resizeQuality: 'high',
        });
        yield { timeMs, picture, scale: shown.widthPx / width } satisfies Frame;
      }
    },
    close,
  };
}
