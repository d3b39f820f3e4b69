import { createScaler } from './createScaler';
import type { PictureFeed } from './pictureFeed';

/**
 * Pictures of a camera as a video element shows them: works in every browser that can read pictures at all.
 *
 * @param stream  of a running camera
 */
export function createElementFeed(stream: MediaStream): PictureFeed {
  const [track] = stream.getVideoTracks();
  const scaler = createScaler();
  const video = document.createElement('video');
  video.muted = true;
  video.playsInline = true;
  video.srcObject = stream;
  let seen = 0;
  let newestMs = -Infinity;
  let givenMs = -Infinity;
  let isOpen = true;
  let wake: () => void = () => undefined;

  const onPicture = (nowMs: number, { captureTime }: VideoFrameCallbackMetadata) => {
    seen++;
    newestMs = Math.max(newestMs, captureTime ?? nowMs);
    wake();
    if (isOpen) video.requestVideoFrameCallback(onPicture);
  };
  const close = () => {
    if (!isOpen) return;
    isOpen = false;
    track?.removeEventListener('ended', close);
    video.srcObject = null;
    scaler.close();
    wake();
  };
  track?.addEventListener('ended', close);
  video.requestVideoFrameCallback(onPicture);
  // A page that may not play even a silent video delivers no pictures; the caller has its own time-out.
  void video.play().catch(() => undefined);

  return {
    async next() {
      while (isOpen) {
        if (newestMs <= givenMs) {
          await new Promise<void>((resolve) => (wake = resolve));
          continue;
        }
        const timeMs = (givenMs = newestMs);
        const frame = shownFrame(video);
        if (frame === null) continue;
        const scaled = await scaler.scale(frame);
        return scaled && { timeMs, ...scaled };
      }
      return null;
    },
    seen: () => seen,
    close,
  };
}

/** What a video element shows; null while it has nothing to show. */
function shownFrame(video: HTMLVideoElement): VideoFrame | null {
  try {
    return new VideoFrame(video, { timestamp: 0 });
  } catch {
    return null;
  }
}
