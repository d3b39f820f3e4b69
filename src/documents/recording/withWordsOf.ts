import type { RecordingDocument } from './recordingDocument';
import { emptyReview, mostLimitsSet, mostRemarks } from './reviewSchema';

/** A recording with all limits that were set in either version of it, the latest in force, and all remarks of both. */
export function withWordsOf(first: RecordingDocument, second: RecordingDocument): RecordingDocument {
  const [mine, theirs] = [first.review ?? emptyReview, second.review ?? emptyReview];
  const limitsSet = inTime(mine.limitsSet, theirs.limitsSet).slice(-mostLimitsSet);
  const remarks = inTime(mine.remarks, theirs.remarks).slice(-mostRemarks);
  if (limitsSet.length === 0 && remarks.length === 0) return first;
  return {
    ...first,
    limits: limitsSet.at(-1)?.limits ?? first.limits,
    review: { ...mine, limitsSet, remarks },
  };
}

/** Entries of both in order of time, each once. */
function inTime<Entry extends { at: string }>(mine: readonly Entry[], theirs: readonly Entry[]): Entry[] {
  const all = new Map([...mine, ...theirs].map((one) => [JSON.stringify(one), one]));
  return [...all]
    .sort(([a, { at }], [b, other]) => Date.parse(at) - Date.parse(other.at) || (a < b ? -1 : 1))
    .map(([, one]) => one);
}
