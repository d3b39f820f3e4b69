import { describe, expect, it } from 'vitest';
import { createStore } from 'zustand/vanilla';
import { guardLeaving } from '#app/guardLeaving';
import { createReview } from '#features/review/store/createReview';
import type { LeaveGuard } from '#shell/navigation/createNavigation';
import { fakeAdapters } from '../../support/fakeAdapters';

const video = new File(['x'], 'stairs.mp4', { type: 'video/mp4' });

/** A review, and what leaving it for the start or closing the page asks. */
function openReview() {
  const { adapters } = fakeAdapters();
  const review = createReview(adapters);
  const guards: LeaveGuard[] = [];
  guardLeaving(
    { screen: () => 'review', guard: (guard) => void guards.push(guard) },
    {
      review,
      tracking: { store: createStore(() => ({ isTracking: false })) as never, cancel: () => undefined },
    },
  );
  const asks = (to: 'start' | null) => guards.some((guard) => guard.question(to) !== null);
  return { review, asks };
}

describe('guardLeaving(navigation, parts)', () => {
  it('asks before a measured recording is lost with the page, until it is saved as a file', async () => {
    const { review, asks } = openReview();
    expect(asks(null)).toBe(false);
    await review.openFile(video);
    review.setSide('right');
    await review.startTracking();
    expect(review.store.getState().recording).not.toBeNull();
    expect(asks(null)).toBe(true);
    expect(asks('start')).toBe(false); // It stays in the page.
    review.saveRecording();
    expect(asks(null)).toBe(false);
    review.setRemark(null, 'Wobbly.');
    expect([asks(null), asks('start')]).toEqual([true, true]);
  });

  it('asks nothing of the example, which can be opened again', async () => {
    const { review, asks } = openReview();
    await review.openExample();
    expect([asks(null), asks('start')]).toEqual([false, false]);
  });
});
