import { setPeakChange } from '#core/change/setPeakChange';
import { compareConditions } from '#core/conditions/compareConditions';
import type { SetConditions } from '#core/conditions/setConditions';
import { findSetPeak } from '#core/scoring/findSetPeak';
import { completeRepetitions } from '#documents/recording/completeRepetitions';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { SessionSet } from '#documents/session/sessionDocument';
import { setConditions } from '#documents/session/setConditions';

/** A set with what was measured of it. */
export interface MeasuredSet {
  set: Pick<SessionSet, 'task' | 'side' | 'conditions'>;
  recording: Pick<RecordingHead, 'setup' | 'derived'>;
}

/** How far inward the knee went, compared with the last time. */
export type SinceLast = 'less-inward' | 'more-inward';

/**
 * Whether the knee went less or more inward than in the same set of an earlier session, by more than error: of this set
 * and of that one, and of what one person differs by between two days.
 *
 * @returns  null where it did not, where the sets were not done and measured alike, or where too little was measured
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

function isAlike(earlier: MeasuredSet, later: MeasuredSet): boolean {
  const [then, now] = [conditionsOf(earlier), conditionsOf(later)];
  return then !== null && now !== null && compareConditions(then, now).differences.length === 0;
}

function conditionsOf({ set, recording: { setup, derived } }: MeasuredSet): SetConditions | null {
  const measured = {
    bendsFilmed: setup.bends !== undefined,
    measuringVersion: derived.measuringVersion,
  };
  return setConditions(set, measured, null);
}
