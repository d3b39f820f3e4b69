import { findTask, type TaskId } from '#core/exercises/exercises';
import { createSlidingTrack } from '#core/keypoints/createSlidingTrack';
import type { Setup } from '#core/measurement/measurement';
import type { LiveFrame } from '#device/live/liveFrame';
import { placingWindowMs } from '../placing/checkPlacing';
import { checkFurniture } from '../placing/checks/checkFurniture';
import { createPlacing } from '../placing/createPlacing';
import type { Placing, PlacingCheck, PlacingFacts } from '../placing/placing';

/** How often it is checked, ms. */
const everyMs = 250;
/** After this long without a picture everything is reset: the camera was off, or another one, ms. */
const longestGapMs = 1000;

/** Keeps the joints of the last seconds and checks at intervals whether they can be measured. */
export interface PlacingWatch {
  /**
   * @param setup  what is looked for now; before the easy bends that is a two-legged bend
   * @param task  what is done afterwards, which may need a chair or step all the same
   * @returns  what is seen now; null where it is not time to look yet
   */
  push(frame: LiveFrame, setup: Setup, facts: PlacingFacts, task: TaskId): Placing | null;
}

export function createPlacingWatch(): PlacingWatch {
  const recent = createSlidingTrack(placingWindowMs);
  let placing = createPlacing();
  let size = { widthPx: 0, heightPx: 0 };
  let lookedMs = -Infinity;
  return {
    push({ timeMs, row, widthPx, heightPx }, setup, facts, task) {
      const isTurned = widthPx !== size.widthPx || heightPx !== size.heightPx;
      if (isTurned || timeMs - (recent.lastMs() ?? timeMs) > longestGapMs) {
        size = { widthPx, heightPx };
        recent.clear();
        placing = createPlacing();
      }
      recent.push({ timeMs, row });
      if (timeMs - lookedMs < everyMs) return null;
      lookedMs = timeMs;
      const seen = placing.update(recent.read(widthPx, heightPx), setup, facts);
      return setup.task === task ? seen : withFurniture(seen, task, facts);
    },
  };
}

function withFurniture({ checks, first, ready }: Placing, task: TaskId, facts: PlacingFacts): Placing {
  const found = checkFurniture(findTask(task), facts);
  if (found === null) return { checks, first, ready };
  const check: PlacingCheck = { id: 'furniture', ...found };
  const isGood = found.state === 'good';
  return { checks: [...checks, check], first: first ?? (isGood ? null : check), ready: ready && isGood };
}
