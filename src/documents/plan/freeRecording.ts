import type { TaskId } from '#core/exercises/exercises';
import { defaultLimits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { withoutProgress } from './itemProgress';
import type { RepetitionItem } from './planDocument';

/** What is chosen for a recording without a plan. */
export interface FreeChoice {
  task: TaskId;
  side: Side;
  sets: number;
  repetitions: number;
}

/** Rest between the sets of a recording without a plan, s; common practice, no source. */
const restSeconds = 60;

/**
 * Without a plan, pain above this means stop, 0 to 10. 'Up to 2 ideal, up to 5 acceptable' while exercising, as
 * secondary pages say; the lower of the two, since nobody who treats the person has set one.
 */
export const freePainLimit = 2;

/** The item of a recording without a plan. */
export function freeRecording({ task, side, sets, repetitions }: FreeChoice): RepetitionItem {
  return {
    kind: 'repetitions',
    task,
    sides: [side],
    sets,
    repetitions,
    restSeconds,
    tempo: null,
    seatHeightCm: null,
    feedback: 'only-outside',
    limits: { ...defaultLimits },
    ...withoutProgress,
  };
}
