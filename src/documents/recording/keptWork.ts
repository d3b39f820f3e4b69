import type { RecordingDocument } from './recordingDocument';
import type { RecordingHead } from './recordingHead';
import { reviewOnto } from './reviewOnto';
import { emptyReview, type RecordingReview } from './reviewSchema';

/** Whether somebody reviewed a recording or corrected it by hand. */
export function isWorkedOn({ corrections = [], review = emptyReview }: RecordingHead): boolean {
  const { limitsSet, remarks, cues, reviewed } = review;
  return reviewed !== null || [corrections, limitsSet, remarks, cues].some(({ length }) => length > 0);
}

/**
 * A newer version of a recording with the work that was done on the kept one, measured and judged accordingly.
 * Where both have some, the kept one's stays; of the newer one's remarks, those on other moments are added.
 */
export function withKeptWork(newer: RecordingDocument, kept: RecordingHead): RecordingDocument {
  if (!isWorkedOn(kept)) return newer;
  const [mine, theirs] = [kept.review ?? emptyReview, newer.review ?? emptyReview];
  const { bodyHeightCm = newer.setup.bodyHeightCm } = kept.setup;
  const corrections = [kept.corrections ?? [], newer.corrections ?? []].find(({ length }) => length > 0);
  return reviewOnto(newer, {
    ...kept,
    setup: { ...newer.setup, ...(bodyHeightCm === undefined ? {} : { bodyHeightCm }) },
    limits: mine.limitsSet.length > 0 || mine.reviewed !== null ? kept.limits : newer.limits,
    corrections,
    review: {
      limitsSet: mine.limitsSet.length > 0 ? mine.limitsSet : theirs.limitsSet,
      remarks: mergeRemarks(mine.remarks, theirs.remarks),
      cues: mine.cues.length > 0 ? mine.cues : theirs.cues,
      reviewed: mine.reviewed ?? theirs.reviewed,
    },
  });
}

type Remarks = RecordingReview['remarks'];

function mergeRemarks(mine: Remarks, theirs: Remarks): Remarks {
  return [...mine, ...theirs.filter(({ atMs }) => mine.every((one) => one.atMs !== atMs))];
}
