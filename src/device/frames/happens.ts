/** How long a video element may take to open a file or to reach a time before it is given up, ms. */
const patienceMs = 10_000;

/** True once the event comes, false on an error or when it does not come in time. */
export function happens(video: HTMLVideoElement, event: 'loadeddata' | 'seeked'): Promise<boolean> {
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
