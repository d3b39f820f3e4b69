import { createHoldTimer, type HoldState } from '#core/segmentation/createHoldTimer';
import type { HoldItem } from '#documents/plan/planDocument';

/** Progress of the holds of a set after a given time without pauses, ms. */
export function holdAt({ holdSeconds, holds, restSeconds }: HoldItem, workedMs: number): HoldState {
  return createHoldTimer({ seconds: holdSeconds, holds, restSeconds }, 0).at(workedMs);
}
