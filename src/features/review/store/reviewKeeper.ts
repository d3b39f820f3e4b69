import { deriveRecording } from '#documents/recording/buildRecording';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { explainProblem } from '#shell/explainProblem';
import type { KeptReview } from './keptReview';
import { correctionsOf } from './reviewEdits';
import type { ReviewState } from './reviewState';

/** Saves a review as it is edited: one save at a time; changes made during a save go into the next. */
export interface ReviewKeeper {
  begin(kept: KeptReview | null, document: RecordingHead | null): void;
  /** A recording was measured here, and is kept nowhere. */
  beginMeasured(): void;
  /** Where the shown recording is saved; null where it is not. */
  kept(): KeptReview | null;
  /** To be called after every change. */
  changed(): void;
}

/** @param later  calls once the page has drawn what was changed */
export function createReviewKeeper(
  get: () => ReviewState,
  set: (part: Partial<ReviewState>) => void,
  later: (call: () => void) => void,
): ReviewKeeper {
  let current: { kept: KeptReview; document: RecordingHead } | null = null;
  let isSaving = false;
  let isDue = false;

  const save = async () => {
    if (isSaving || current === null) return;
    const mine = current;
    isSaving = true;
    isDue = false;
    let keeping: ReviewState['keeping'] = { state: 'kept' };
    try {
      await mine.kept.save(reviewedRecording(mine.document, get()));
    } catch (error) {
      keeping = { state: 'failed', sentence: explainProblem(error, 'keep').sentence };
    }
    isSaving = false;
    if (mine === current) set({ keeping: isDue ? { state: 'saving' } : keeping });
    if (isDue) void save();
  };

  return {
    begin(kept, document) {
      current = kept === null || document === null ? null : { kept, document };
      set({ keeping: { state: current === null ? 'not-kept' : 'kept' } });
    },
    beginMeasured() {
      current = null;
      set({ keeping: { state: 'measured' } });
    },
    kept: () => current?.kept ?? null,
    changed() {
      if (current === null) return set({ keeping: { state: 'unsaved' } });
      isDue = true;
      set({ keeping: { state: 'saving' } });
      later(() => void save());
    },
  };
}

/** The stored recording with what the review set; the joints stay as they are. */
function reviewedRecording(
  document: RecordingHead,
  { recording, limits, edits, entries }: ReviewState,
): RecordingHead {
  if (recording === null) throw new Error('There is no recording to keep a review of.');
  const { measurement, excluded, setup } = recording;
  return {
    ...document,
    setup,
    limits,
    corrections: correctionsOf(edits),
    derived: deriveRecording(measurement, limits, excluded),
    review: entries,
  };
}
