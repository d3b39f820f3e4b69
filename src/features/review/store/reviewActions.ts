import type { CorrectionChange } from '#core/correction/correction';
import { addCorrection, redoCorrection, undoCorrection } from '#core/correction/correctionHistory';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import type { AppState } from './appState';
import { undoLimits } from './limitHistory';

/** What a therapist does to a recording in its review. */
export interface ReviewActions {
  /** Sets something right by hand; what is measured follows at once. */
  correct(change: CorrectionChange): void;
  /** Takes the last correction or move of a limit back. */
  undo(): void;
  /** Brings the correction back that was taken back last. */
  redo(): void;
  /** Sets the remark on a repetition (a time within it) or on the whole set (null); an empty one goes. */
  setRemark(atMs: number | null, text: string): void;
  markReviewed(isReviewed: boolean): void;
  setCues(cues: RecordingReview['cues']): void;
  setReviewer(name: string): void;
}

interface Parts {
  get: () => AppState;
  set: (part: Partial<AppState>) => void;
  /** Measures the recording anew with the corrections in force. */
  measureAgain: () => void;
  setLimits: (limits: AppState['limits'], before: AppState['limits']['present']) => void;
  /** To be told of every change, so that it is kept. */
  changed: () => void;
  writeReviewer: (name: string) => void;
  now: () => Date;
}

export function createReviewActions(parts: Parts): ReviewActions {
  const { get, set, measureAgain, setLimits, changed, now } = parts;
  const signed = () => ({ by: get().reviewer, at: now().toISOString() });
  const setReview = (part: Partial<RecordingReview>) => {
    set({ review: { ...get().review, ...part } });
    changed();
  };
  const withCorrections = (corrections: AppState['corrections'], undoable: AppState['undoable']) => {
    set({ corrections, undoable });
    measureAgain();
    changed();
  };

  return {
    correct(change) {
      const { recording, corrections, undoable } = get();
      if (recording === null) return;
      withCorrections(addCorrection(corrections, { change, ...signed() }), [...undoable, 'correction']);
    },
    undo() {
      const { limits, corrections, undoable, review } = get();
      const last = limits.movingFrom !== null ? 'limits' : undoable.at(-1);
      if (last === 'correction') return withCorrections(undoCorrection(corrections), undoable.slice(0, -1));
      if (last !== 'limits') return;
      setLimits(undoLimits(limits), limits.present);
      if (limits.movingFrom === null)
        set({
          undoable: undoable.slice(0, -1),
          review: { ...review, limitsSet: review.limitsSet.slice(0, -1) },
        });
      changed();
    },
    redo() {
      const { corrections, undoable } = get();
      if (corrections.undone.length === 0) return;
      withCorrections(redoCorrection(corrections), [...undoable, 'correction']);
    },
    setRemark(atMs, text) {
      const others = get().review.remarks.filter((remark) => remark.atMs !== atMs);
      const trimmed = text.trim();
      setReview({ remarks: trimmed === '' ? others : [...others, { atMs, text: trimmed, ...signed() }] });
    },
    markReviewed: (isReviewed) => setReview({ reviewed: isReviewed ? signed() : null }),
    setCues: (cues) => setReview({ cues }),
    setReviewer(reviewer) {
      set({ reviewer });
      parts.writeReviewer(reviewer);
    },
  };
}
