import type { TaskId } from '#core/exercises/exercises';
import type { ComparedClip } from '../../validation/compareClip';

/** A clip of a validated folder. */
export interface ValidatedClip extends ComparedClip {
  clip: string;
  task: TaskId;
  camera: { yawDeg: number; rollDeg: number };
  /** Why the clip could not be measured at all, else null. */
  problem: string | null;
  timingMaeS: number | null;
  framesPerSecond: number | null;
  /** How long the whole took, over the usual look alone; null where the joints were tracked before. */
  wholeRatio: number | null;
}
