import { createPaceWatch } from '#device/live/createPaceWatch';
import { decideLive } from '#device/live/decideLive';
import type { PaceState } from './homeState';
import type { HomeStore } from './homeStore';

/** Whether the device is fast enough for repetitions to be counted while they are done. */
export interface CountingPace {
  /** As it was tried out, which may still go on in the beginning. */
  hasFeedback(): boolean;
  /** Takes in what the trying out has shown, once it has. */
  take(): void;
  /** A set begins to be counted. */
  beginSet(): void;
  /** @param trackedFps  pictures a second in which joints were looked for in the last two seconds */
  look(nowMs: number, trackedFps: number): void;
  /** Tries a device that was too slow in one set again in the next. */
  tryAgain(): void;
}

/** @param tell  hears whether repetitions can be counted from now on */
export function createCountingPace(
  { get, set }: Pick<HomeStore, 'get' | 'set'>,
  canCount: () => boolean,
  tell: (works: boolean) => void,
): CountingPace {
  let isFastEnough = createPaceWatch();
  let tried: PaceState = { state: 'unknown' };
  const hasFeedback = () => tried.state === 'known' && tried.hasFeedback;
  return {
    hasFeedback,
    take() {
      const { pace } = get();
      if (tried.state === 'known' || pace.state !== 'known') return;
      tried = pace;
      if (!pace.hasFeedback) tell(false);
    },
    beginSet() {
      isFastEnough = createPaceWatch();
    },
    look(nowMs, trackedFps) {
      if (!hasFeedback() || isFastEnough(nowMs, trackedFps) || !canCount()) return;
      tell(false);
      const { pace } = get();
      const sentence = decideLive(trackedFps, trackedFps)?.sentence ?? null;
      if (pace.state === 'known') set({ pace: { ...pace, sentence } });
    },
    tryAgain() {
      if (!hasFeedback()) return;
      tell(true);
      set({ pace: tried });
    },
  };
}
