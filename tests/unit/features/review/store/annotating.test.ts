import { describe, expect, it } from 'vitest';
import { keptReview, settle } from '../../../../support/startReview';

describe('setRemark(atMs, text), markReviewed(isReviewed)', () => {
  it('keeps one signed remark per place; an empty one is removed', async () => {
    const { review, saved, state } = await keptReview();
    review.setRemark(2000, ' Good depth. ');
    review.setRemark(null, 'Tired at the end.');
    review.setRemark(2000, 'Good depth, slow.');
    expect(state().entries.remarks.map(({ text }) => text)).toEqual([
      'Tired at the end.',
      'Good depth, slow.',
    ]);
    review.setRemark(2000, ' ');
    review.markReviewed(true);
    await settle();
    expect(saved.at(-1)!.review).toMatchObject({
      remarks: [{ atMs: null, text: 'Tired at the end.' }],
      reviewed: { by: 'T1' },
    });
    review.markReviewed(false);
    expect(state().entries.reviewed).toBeNull();
  });
});
