/** How long one picture may take to come, ms. */
const patienceMs = 8000;

/** Fetches single pictures from a video without moving the one on the screen. */
export interface StillReader {
  /** Calls back with the video paused at a time; only the last call counts. */
  read(timeMs: number, onPicture: (video: HTMLVideoElement) => void, onFailure: () => void): void;
  close(): void;
}

export function createStillReader(file: File): StillReader {
  const video = document.createElement('video');
  const url = URL.createObjectURL(file);
  video.muted = true;
  video.playsInline = true;
  video.preload = 'auto';
  video.src = url;
  let stop = () => {};

  return {
    read(timeMs, onPicture, onFailure) {
      stop();
      const finish = (tell: () => void) => () => {
        stop();
        tell();
      };
      const [seen, failed] = [finish(() => onPicture(video)), finish(onFailure)];
      const timer = setTimeout(failed, patienceMs);
      stop = () => {
        clearTimeout(timer);
        video.removeEventListener('seeked', seen);
        video.removeEventListener('error', failed);
      };
      video.addEventListener('seeked', seen);
      video.addEventListener('error', failed);
      video.currentTime = timeMs / 1000;
    },
    close() {
      stop();
      video.removeAttribute('src');
      video.load();
      URL.revokeObjectURL(url);
    },
  };
}
