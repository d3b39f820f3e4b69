import { happens } from './happens';

/** How long the browser may take to report which frame is shown, ms; to a page in the background it never does. */
const tellingMs = 400;
/** How often it is sent to the same frame. */
const tries = 3;

/**
 * Makes a stopped video element show one frame. On a busy machine it may still show a neighbouring frame when
 * it reports that it has reached the time. Where the browser reports which frame is shown, the right one is
 * waited for, and requested again.
 *
 * @param timeMs  when the frame is shown in the video
 * @param nextMs  when the next one is, later
 * @param isAsked  whether to wait for the browser's report
 * @returns  'unsure' where nothing was reported in time, or only other frames: the file's times and the
 *   element's may differ, or the page is in the background; 'failed' where the element fails, or does not get
 *   there in time
 */
export async function stepTo(
  video: HTMLVideoElement,
  timeMs: number,
  nextMs: number,
  isAsked: boolean,
): Promise<'shown' | 'unsure' | 'failed'> {
  const isIt = (shownMs: number) => Math.abs(shownMs - timeMs) < (nextMs - timeMs) / 2;
  for (let attempt = 0; attempt < tries; attempt++) {
    const watch = watchShown(video, isIt);
    // Aim between two frames: a time on the edge may show either of them.
    video.currentTime = (timeMs + nextMs) / 2000;
    const hasCome = await happens(video, 'seeked');
    const told = hasCome && isAsked ? await watch.told(tellingMs) : 'nothing';
    watch.stop();
    if (!hasCome) return 'failed';
    if (told === 'it') return 'shown';
    if (told === 'nothing') break;
  }
  return 'unsure';
}

/** What the browser reports about the frames that an element shows, from now on. */
function watchShown(video: HTMLVideoElement, isIt: (shownMs: number) => boolean) {
  let told: 'nothing' | 'another' = 'nothing';
  let arrive: (told: 'it') => void = () => undefined;
  const arrived = new Promise<'it'>((resolve) => (arrive = resolve));
  let handle: number | null = null;
  const listen = () => {
    if (!('requestVideoFrameCallback' in video)) return;
    handle = video.requestVideoFrameCallback((_, { mediaTime }) => {
      if (isIt(mediaTime * 1000)) return arrive('it');
      told = 'another';
      listen();
    });
  };
  listen();
  return {
    /** 'it' as soon as the frame is shown; what was reported instead where that does not happen in time. */
    async told(withinMs: number): Promise<'it' | 'another' | 'nothing'> {
      let timer: ReturnType<typeof setTimeout> | undefined;
      const late = new Promise<null>((resolve) => (timer = setTimeout(() => resolve(null), withinMs)));
      const first = await Promise.race([arrived, handle === null ? null : late]);
      clearTimeout(timer);
      return first ?? told;
    },
    stop() {
      if (handle !== null) video.cancelVideoFrameCallback(handle);
    },
  };
}
