import { describe, expect, it } from 'vitest';
import { keptReview, settle, trackedReview } from '../../../../support/startReview';

describe('setBodyHeight(bodyHeightCm)', () => {
  it('applies to the next recording and to the one on screen, and can be undone', async () => {
    const { review } = await trackedReview();
    review.setBodyHeight(168);
    expect(review.store.getState().recording!.measurement.setup.bodyHeightCm).toBe(168);
    review.setBodyHeight(undefined);
    expect(review.store.getState().recording!.measurement.setup.bodyHeightCm).toBeUndefined();
  });
});

describe('setSide(side), setTask(task)', () => {
  it('measure the kept joints again without tracking again', async () => {
    const { review, state, world } = await trackedReview();
    const frames = world.framesEstimated;
    const before = review.store.getState().recording;
    review.setSide('left');
    expect(review.store.getState().recording?.measurement.setup.side).toBe('left');
    expect(review.store.getState().recording?.track).toBe(before?.track);
    expect(state().judgements).toHaveLength(
      review.store.getState().recording!.measurement.repetitions.length,
    );
    expect(review.store.getState().recording?.measurement.notes).toContainEqual({
      kind: 'side-doubtful',
      side: 'left',
    });
    review.setTask('single-leg-squat');
    expect(review.store.getState().recording?.measurement.setup.task).toBe('single-leg-squat');
    expect(world.framesEstimated).toBe(frames);
  });

  it('leave a kept recording alone while the next one is set up', async () => {
    const { navigation, review } = await trackedReview();
    void navigation.show('start');
    const before = review.store.getState().recording;
    review.setSide('left');
    expect(review.store.getState().recording).toBe(before);
    expect(before?.measurement.setup.side).toBe('right');
  });

  it('switches the working side as a correction, and leaves the setup as it was', async () => {
    const { review, saved } = await keptReview();
    review.setSide('left');
    await settle();
    expect(review.store.getState().recording!.measurement.setup.side).toBe('left');
    expect(saved.at(-1)!.setup.side).toBe('right');
  });
});
