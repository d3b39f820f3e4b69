import type { CorrectionChange } from '#core/correction/correction';
import { addCorrection, redoCorrection, undoCorrection } from '#core/correction/correctionHistory';
import type { RecordingReview } from '#documents/recording/reviewSchema';
import { undoLimits } from './limitHistory';
import type { ReviewState } from './reviewState';

/** What a therapist does to a recording in review. */
export interface ReviewActions {
  /** Corrects something by hand; the measurement is updated at once. */
  correct(change: CorrectionChange): void;
  /** Undoes the last correction or move of a limit. */
  undo(): void;
  /** Redoes the correction that was undone last. */
  redo(): void;
  /** Sets the remark on a repetition (a time within it) or on the whole set (null); an empty one is removed. */
  setRemark(atMs: number | null, text: string): void;
  markReviewed(isReviewed: boolean): void;
  setCues(cues: RecordingReview['cues']): void;
  setReviewer(name: string): void;
}

interface Parts {
  get: () => ReviewState;
  set: (part: Partial<ReviewState>) => void;
  /** Measures the recording again with the corrections in force. */
  measureAgain: () => void;
  setLimits: (limits: ReviewState['limits'], before: ReviewState['limits']['present']) => void;
  /** Notified of every change, so that it is saved. */
  changed: () => void;
  writeReviewer: (name: string) => void;
  now: () => Date;
}

export function createReviewActions(parts: Parts): ReviewActions {
  const { get, set, measureAgain, setLimits, changed, now } = parts;
  const signed = () => ({ by: get().reviewer, at: now().toISOString() });
  const setReview = (part: Partial<RecordingReview>) => {
    set({ entries: { ...get().entries, ...part } });
    changed();
  };
  const withCorrections = (corrections: ReviewState['corrections'], undoable: ReviewState['undoable']) => {
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
      const { limits, corrections, undoable, entries } = get();
      const last = limits.movingFrom !== null ? 'limits' : undoable.at(-1);
      if (last === 'correction') return withCorrections(undoCorrection(corrections), undoable.slice(0, -1));
      if (last !== 'limits') return;
      setLimits(undoLimits(limits), limits.present);
      if (limits.movingFrom === null)
        set({
          undoable: undoable.slice(0, -1),
          entries: { ...entries, limitsSet: entries.limitsSet.slice(0, -1) },
        });
      changed();
    },
    redo() {
      const { corrections, undoable } = get();
      if (corrections.undone.length === 0) return;
      withCorrections(redoCorrection(corrections), [...undoable, 'correction']);
    },
    setRemark(atMs, text) {
      const others = get().entries.remarks.filter((remark) => remark.atMs !== atMs);
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
