import { describe, expect, it } from 'vitest';
import { startReview } from '../../../../support/startReview';

const notVideo = new File(['x'], 'bad.txt');

describe('createReview(adapters)', () => {
  it('starts with who reviewed last on this device, and nothing shown', () => {
    expect(startReview().state()).toMatchObject({ reviewer: 'T1', recording: null, problem: null });
  });

  it('drops a problem on the next screen', async () => {
    const { review, navigation, state } = startReview();
    await review.openFile(notVideo);
    expect(state().problem).not.toBeNull();
    void navigation.show('sessions');
    expect(state().problem).toBeNull();
  });

  it('drops a problem on demand', async () => {
    const { review, state } = startReview();
    await review.openFile(notVideo);
    review.dismissProblem();
    expect(state().problem).toBeNull();
  });
});
