import { buildKeypointTrack, type TimedRow } from '#core/keypoints/keypointTrack';
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
  let rows: TimedRow[] = [];
  let lookedMs = -Infinity;
  return {
    push({ timeMs, row, widthPx, heightPx }) {
      rows = rows.filter((earlier) => earlier.timeMs > timeMs - quietStandMs - everyMs);
      rows.push({ timeMs, row });
      if (timeMs - lookedMs < everyMs) return undefined;
      lookedMs = timeMs;
      const seen = quietStand(buildKeypointTrack(widthPx, heightPx, rows));
      return seen.problem === null ? null : seen.sentence;
    },
  };
}
