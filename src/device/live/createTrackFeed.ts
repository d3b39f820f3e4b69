import { createScaler } from './createScaler';
import type { PictureFeed } from './pictureFeed';

/**
 * Pictures straight from the camera, each with its own time, without a video element in between.
 *
 * @param stream  of a running camera
 * @returns null where the browser can't
 */
export function createTrackFeed(stream: MediaStream): PictureFeed | null {
  const [track] = stream.getVideoTracks();
  if (!('MediaStreamTrackProcessor' in globalThis) || track === undefined) return null;
  const processor = new MediaStreamTrackProcessor({
    track: track as MediaStreamVideoTrack,
    maxBufferSize: 1,
  });
  const reader = processor.readable.getReader();
  const scaler = createScaler();
  let seen = 0;
  let newest: { timeMs: number; frame: VideoFrame } | null = null;
  let isOpen = true;
  let wake: () => void = () => undefined;
  /** The camera's clock starts anywhere; the picture that arrived fastest shows where. */
  let clockOffsetMs = Infinity;

  const close = () => {
    if (!isOpen) return;
    isOpen = false;
    newest?.frame.close();
    newest = null;
    void reader.cancel().catch(() => undefined);
    scaler.close();
    wake();
  };
  const read = async () => {
    while (isOpen) {
      const { value: frame } = await reader.read();
      if (frame === undefined) return;
      newest?.frame.close();
      newest = null;
      if (!isOpen) return frame.close();
      seen++;
      const cameraMs = frame.timestamp / 1000;
      clockOffsetMs = Math.min(clockOffsetMs, performance.now() - cameraMs);
      newest = { timeMs: cameraMs + clockOffsetMs, frame };
      wake();
    }
  };
  void read()
    .catch(() => undefined)
    .finally(close);

  return {
    async next() {
      while (isOpen && newest === null) await new Promise<void>((resolve) => (wake = resolve));
      if (newest === null) return null;
      const { timeMs, frame } = newest;
      newest = null;
      const scaled = await scaler.scale(frame);
      return scaled && { timeMs, ...scaled };
    },
    seen: () => seen,
    close,
  };
}
