import type { Frame, FrameSource, VideoFacts } from './frameSource';
import { scaledSize } from './scaledSize';

/** How long a video element may take to open a file or to show one frame before it is given up, ms. */
const patienceMs = 10_000;

/**
 * Frames shown by a video element that is stepped from time to time: slower, for browsers that can't decode the file
 * otherwise.
 *
 * @param timesMs  presentation times of the frames as the container tells them
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
    async *frames(maxHeightPx, afterMs = -1) {
      const { width, height } = scaledSize(shown.widthPx, shown.heightPx, maxHeightPx);
      for (const [index, timeMs] of timesMs.entries()) {
        const nextMs = timesMs[index + 1] ?? timeMs + 20;
        if (nextMs <= timeMs || timeMs <= afterMs) continue;
        // Aim between two frames: a time on the edge may show either of them.
        video.currentTime = (timeMs + nextMs) / 2000;
        if (!(await happens(video, 'seeked'))) return;
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

/** True once the event comes, false on an error or when it does not come in time. */
function happens(video: HTMLVideoElement, event: 'loadeddata' | 'seeked'): Promise<boolean> {
  return new Promise((resolve) => {
    const settle = (value: boolean) => () => {
      clearTimeout(timer);
      video.removeEventListener(event, good);
      video.removeEventListener('error', bad);
      resolve(value);
    };
    const [good, bad] = [settle(true), settle(false)];
    const timer = setTimeout(bad, patienceMs);
    video.addEventListener(event, good);
    video.addEventListener('error', bad);
  });
}
