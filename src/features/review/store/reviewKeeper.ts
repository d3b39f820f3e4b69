import { deriveRecording } from '#documents/recording/buildRecording';
import type { RecordingHead } from '#documents/recording/recordingHead';
import type { AppState } from './appState';
import { explainProblem } from '#shell/explainProblem';
import type { KeptReview } from './keptReview';

/** Keeps a review as it goes on: one saving at a time, and what came meanwhile in the next. */
export interface ReviewKeeper {
  begin(kept: KeptReview | null, document: RecordingHead | null): void;
  /** Where the shown recording is kept; null where it is not. */
  kept(): KeptReview | null;
  /** To be called after every change. */
  changed(): void;
}

/** @param later  calls once the page has drawn what was changed */
export function createReviewKeeper(
  get: () => AppState,
  set: (part: Partial<AppState>) => void,
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
    let keeping: AppState['keeping'] = { state: 'kept' };
    try {
      await mine.kept.save(reviewedRecording(mine.document, get()));
    } catch (error) {
      keeping = { state: 'failed', sentence: explainProblem(error, 'be kept').sentence };
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
    kept: () => current?.kept ?? null,
    changed() {
      if (current === null) return set({ keeping: { state: 'unsaved' } });
      isDue = true;
      set({ keeping: { state: 'saving' } });
      later(() => void save());
    },
  };
}

/** The kept session with what the review made of it; the joints stay where they are. */
function reviewedRecording(
  document: RecordingHead,
  { recording, limits, corrections, review }: AppState,
): RecordingHead {
  if (recording === null) throw new Error('There is no recording to keep a review of.');
  const { done } = corrections;
  const { measurement, excluded, setup } = recording;
  return {
    ...document,
    setup,
    limits: limits.present,
    corrections: [...done],
    derived: deriveRecording(measurement, limits.present, excluded),
    review,
  };
}
