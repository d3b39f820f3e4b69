import { describe, expect, it } from 'vitest';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { keptReview, settle } from '../../../../support/startReview';

describe('createReviewKeeper(get, set, later)', () => {
  it('reports a failed save', async () => {
    const { review, state, middleOf } = await keptReview(() => Promise.reject(new Error('full')));
    review.correct({ kind: 'exclude', atMs: middleOf(0), reason: 'A trial.' });
    await settle();
    expect(state().keeping.state).toBe('failed');
    expect(review.store.getState().recording!.isByHand).toBe(true);
  });

  it('saves changes made during a save', async () => {
    let letGo: () => void = () => undefined;
    const saved: RecordingHead[] = [];
    const { review, state } = await keptReview(async (recording) => {
      saved.push(recording);
      await new Promise<void>((resolve) => (letGo = resolve));
    });
    review.setRemark(null, 'First.');
    review.setRemark(null, 'Second.');
    letGo();
    await settle();
    expect(saved.at(-1)!.review!.remarks).toMatchObject([{ text: 'Second.' }]);
    expect(state().keeping.state).toBe('saving');
    letGo();
    await settle();
    expect(state().keeping.state).toBe('kept');
  });
});
