import { setPeakChange } from '#core/change/setPeakChange';
import { findSetPeak } from '#core/scoring/findSetPeak';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionSet } from '#documents/session/sessionDocument';

/** A set with what was measured of it. */
export interface MeasuredSet {
  set: Pick<SessionSet, 'item' | 'task' | 'side' | 'number' | 'prescribedRepetitions' | 'cutShort'>;
  recording: Pick<RecordingHead, 'setup' | 'derived'>;
}

/** How far inward the knee went, compared with the last time. */
export type SinceLast = 'less-inward' | 'more-inward';

/**
 * Whether the knee went less or more inward than in the same set of the last session of the plan, by more than error: of
 * this set and of that one, and of what one person differs by between two days.
 *
 * @returns  null where it did not, where the sets are not alike, or where too little was measured
 */
export function sinceLast(earlier: MeasuredSet, later: MeasuredSet): SinceLast | null {
  if (!isAlike(earlier, later)) return null;
  const [before, now] = [earlier, later].map(({ recording }) =>
    findSetPeak(completeRepetitions(recording.derived.repetitions)),
  );
  if (!before || !now) return null;
  const { verdict } = setPeakChange(before, now);
  if (verdict === 'within-error') return null;
  return verdict === 'lower' ? 'less-inward' : 'more-inward';
}

/** Whether two sets were asked for, done and measured in the same way. */
function isAlike(one: MeasuredSet, other: MeasuredSet): boolean {
  const conditions = ({ set, recording }: MeasuredSet) => [
    set.item,
    set.task,
    set.side,
    set.number,
    set.prescribedRepetitions,
    set.cutShort === null,
    recording.setup.bends === undefined,
    recording.derived.measuringVersion,
  ];
  const others = conditions(other);
  return conditions(one).every((condition, index) => condition === others[index]);
}
