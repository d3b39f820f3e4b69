import type { RecordingReview } from '#documents/recording/reviewSchema';
import type { Review } from './review';
import type { ReviewParts } from './reviewParts';
import { signed } from './signed';

/** Remarks, cues and the mark 'reviewed', and who sets them. */
export function annotating({
  adapters,
  get,
  set,
  keeper,
}: Omit<ReviewParts, 'showing' | 'closerLook'>): Pick<
  Review,
  'setRemark' | 'markReviewed' | 'setCues' | 'setReviewer'
> {
  const setEntries = (part: Partial<RecordingReview>) => {
    set({ entries: { ...get().entries, ...part } });
    keeper.changed();
  };

  return {
    setRemark(atMs, text) {
      const others = get().entries.remarks.filter((remark) => remark.atMs !== atMs);
      const trimmed = text.trim();
      const own = trimmed === '' ? [] : [{ atMs, text: trimmed, ...signed(get(), adapters) }];
      setEntries({ remarks: [...others, ...own] });
    },
    markReviewed: (isReviewed) => setEntries({ reviewed: isReviewed ? signed(get(), adapters) : null }),
    setCues: (cues) => setEntries({ cues }),
    setReviewer(reviewer) {
      set({ reviewer });
      adapters.reviewer.write(reviewer);
    },
  };
}
