import type { HoldId } from '../holds';
import type { TaskId } from '../tasks';
import type { LibraryEntry } from './libraryEntry';
import { hipAbductionOnBentLeg } from './tasks/hipAbductionOnBentLeg';
import { lateralStepDown } from './tasks/lateralStepDown';
import { quadPressHold } from './tasks/quadPressHold';
import { singleLegSitToStand } from './tasks/singleLegSitToStand';
import { singleLegSquat } from './tasks/singleLegSquat';
import { slidingLegSquat } from './tasks/slidingLegSquat';
import { splitStanceSitToStand } from './tasks/splitStanceSitToStand';
import { twoLeggedBend } from './tasks/twoLeggedBend';

/** In the order in which a treatment usually goes through them: common practice, no source. */
export const libraryIds = [
  'quad-press-hold',
  'two-legged-bend',
  'hip-abduction-on-bent-leg',
  'sliding-leg-squat',
  'split-stance-sit-to-stand',
  'lateral-step-down',
  'single-leg-squat',
  'single-leg-sit-to-stand',
] as const satisfies readonly (TaskId | HoldId)[];

const entries: Record<TaskId | HoldId, LibraryEntry> = {
  'quad-press-hold': quadPressHold,
  'two-legged-bend': twoLeggedBend,
  'hip-abduction-on-bent-leg': hipAbductionOnBentLeg,
  'sliding-leg-squat': slidingLegSquat,
  'split-stance-sit-to-stand': splitStanceSitToStand,
  'lateral-step-down': lateralStepDown,
  'single-leg-squat': singleLegSquat,
  'single-leg-sit-to-stand': singleLegSitToStand,
};

export function findEntry(id: TaskId | HoldId): LibraryEntry {
  return entries[id];
}
