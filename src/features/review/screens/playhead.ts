import { clamp } from '#core/clamp';
import { nearestFrame } from '#core/scoring/nearestFrame';
import { seekTimeMs } from '#ui/drawing/seekTimeMs';

export interface PlayheadState {
  /** Time that the video is asked to show, ms. */
  timeMs: number;
  /** Time of the frame that is on the screen, ms; behind timeMs while the video seeks. */
  shownMs: number;
  isPlaying: boolean;
  /** 1 is the speed at which it was filmed. */
  rate: number;
  /** The stretch that is looped; null for all of it. */
  loop: { fromMs: number; toMs: number } | null;
}

/** The one clock of the review: video, plot and table follow it, and each may move it. Works without a video too. */
export interface Playhead {
  state(): PlayheadState;
  subscribe(listener: () => void): () => void;
  /** Moves to the frame nearest to a time. */
  seek(timeMs: number): void;
  step(frames: number): void;
  togglePlaying(): void;
  setRate(rate: number): void;
  setLoop(loop: PlayheadState['loop']): void;
  /** Follows a video element; returns a function that stops following it. */
  follow(video: HTMLVideoElement): () => void;
}

/**
 * @param timesMs  presentation times of the frames, ms, increasing
 * @param startMs  where it stands at first; the frame nearest to it
 */
export function createPlayhead(timesMs: ArrayLike<number>, startMs = timesMs[0] ?? 0): Playhead {
  const beginMs = timesMs[0] ?? 0;
  const firstMs = timesMs[nearestFrame(timesMs, startMs)] ?? 0;
  let state: PlayheadState = { timeMs: firstMs, shownMs: firstMs, isPlaying: false, rate: 1, loop: null };
  let followed: HTMLVideoElement | null = null;
  const listeners = new Set<() => void>();

  const change = (part: Partial<PlayheadState>) => {
    state = { ...state, ...part };
    listeners.forEach((listener) => listener());
  };

  const showFrame = (frame: number) => {
    const timeMs = timesMs[clamp(frame, 0, timesMs.length - 1)];
    if (timeMs === undefined) return;
    if (followed === null) return change({ timeMs, shownMs: timeMs });
    followed.currentTime = seekTimeMs(timesMs, frame) / 1000;
    change({ timeMs });
  };

  const isOutside = (timeMs: number) =>
    state.loop !== null && (timeMs < state.loop.fromMs - 1 || timeMs >= state.loop.toMs);

  return {
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    seek: (timeMs) => showFrame(nearestFrame(timesMs, timeMs)),
    step(frames) {
      followed?.pause();
      showFrame(nearestFrame(timesMs, state.timeMs) + frames);
    },
    togglePlaying() {
      if (followed === null) return;
      if (followed.paused) void followed.play().catch(() => undefined);
      else followed.pause();
    },
    setRate(rate) {
      if (followed !== null) followed.playbackRate = rate;
      change({ rate });
    },
    setLoop(loop) {
      change({ loop });
      if (loop !== null && isOutside(state.timeMs)) showFrame(nearestFrame(timesMs, loop.fromMs));
    },
    follow(video) {
      followed = video;
      video.playbackRate = state.rate;
      let request = 0;
      const onFrame = (_: number, { mediaTime }: { mediaTime: number }) => {
        const shownMs = mediaTime * 1000;
        change(video.seeking ? { shownMs } : { shownMs, timeMs: shownMs });
        if (!video.paused && !video.seeking && state.loop !== null && isOutside(shownMs))
          showFrame(nearestFrame(timesMs, state.loop.fromMs));
        request = video.requestVideoFrameCallback(onFrame);
      };
      request = video.requestVideoFrameCallback(onFrame);
      const onPlaying = () => change({ isPlaying: !video.paused });
      const onEnded = () => {
        if (state.loop === null) return;
        showFrame(nearestFrame(timesMs, state.loop.fromMs));
        void video.play().catch(() => undefined);
      };
      // The first picture of a video that was sent on before it was loaded is not told of.
      const onSeeked = () => change({ shownMs: state.timeMs });
      video.addEventListener('seeked', onSeeked);
      video.addEventListener('ended', onEnded);
      video.addEventListener('play', onPlaying);
      video.addEventListener('pause', onPlaying);
      if (state.timeMs > beginMs) showFrame(nearestFrame(timesMs, state.timeMs));
      return () => {
        video.cancelVideoFrameCallback(request);
        video.removeEventListener('play', onPlaying);
        video.removeEventListener('pause', onPlaying);
        video.removeEventListener('ended', onEnded);
        video.removeEventListener('seeked', onSeeked);
        if (followed === video) followed = null;
        change({ isPlaying: false });
      };
    },
  };
}
