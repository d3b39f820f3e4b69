import { createSlidingTrack } from '#core/keypoints/createSlidingTrack';
import type { LiveFrame } from '#device/live/liveFrame';
import { quietStand, quietStandMs } from '../placing/quietStand';

/** How often it is looked at, ms. */
const everyMs = 250;

/** Looks whether somebody stands still on both feet. */
export interface StandWatch {
  /** @returns  null where they do, else what to do; undefined where it is not time to look */
  push(frame: LiveFrame): string | null | undefined;
}

/** From one quiet stand's beginning on. */
export function createStandWatch(): StandWatch {
  const recent = createSlidingTrack(quietStandMs + everyMs);
  let lookedMs = -Infinity;
  return {
    push({ timeMs, row, widthPx, heightPx }) {
      recent.push({ timeMs, row });
      if (timeMs - lookedMs < everyMs) return undefined;
      lookedMs = timeMs;
      const seen = quietStand(recent.read(widthPx, heightPx));
      return seen.problem === null ? null : seen.sentence;
    },
  };
}
