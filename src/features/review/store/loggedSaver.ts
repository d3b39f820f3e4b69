import type { LogKind } from '#documents/patient/logEntry';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { emptyReview } from '#documents/recording/reviewSchema';
import type { KeptReview } from './keptReview';

type Save = KeptReview['save'];

/**
 * Saves a review, then notes what was changed in it: limits and corrections once for each time that it was opened, the
 * mark 'reviewed' each time.
 *
 * @param opened  as the review shows it before anything is changed
 */
export function loggedSaver(save: Save, opened: RecordingHead, note: (what: LogKind) => Promise<void>): Save {
  let before = workOf(opened);
  const noted = new Set<LogKind>();
  return async (reviewed) => {
    await save(reviewed);
    const now = workOf(reviewed);
    const changed: LogKind[] = [];
    if (now.limits !== before.limits) changed.push('limits');
    if (now.corrections !== before.corrections) changed.push('corrections');
    if (now.reviewedAt !== before.reviewedAt)
      changed.push(now.reviewedAt === null ? 'review-withdrawn' : 'review');
    for (const what of changed) {
      if ((what === 'limits' || what === 'corrections') && noted.has(what)) continue;
      await note(what);
      noted.add(what);
    }
    before = now;
  };
}

function workOf({ corrections = [], review = emptyReview }: RecordingHead) {
  return {
    limits: JSON.stringify(review.limitsSet),
    corrections: JSON.stringify(corrections),
    reviewedAt: review.reviewed?.at ?? null,
  };
}
