import { describe, expect, it } from 'vitest';
import type { CarefulTracker } from '#device/pose/poseTracker';
import { createTrackerKeeper } from '#shell/tracking/trackerKeeper';

/** A tracker whose loads take as long as the test says. */
function slowTracker() {
  const underWay: { model: string; finish: () => void }[] = [];
  const tracker = {
    load: (model: string) =>
      new Promise((resolve) =>
        underWay.push({ model, finish: () => resolve({ backend: 'webgl', threads: 1 }) }),
      ),
    close: () => undefined,
  } as unknown as CarefulTracker;
  return { tracker, underWay };
}

const soon = () => new Promise((resolve) => setTimeout(resolve, 0));

describe('createTrackerKeeper(createTracker, onDevice)', () => {
  it('loads one model at a time, so that the one asked for last stays', async () => {
    const { tracker, underWay } = slowTracker();
    const keeper = createTrackerKeeper(
      () => tracker,
      () => undefined,
    );
    const heavy = keeper.ready('heavy');
    const lite = keeper.ready('lite');
    await soon();
    expect(underWay.map(({ model }) => model)).toEqual(['heavy']);
    underWay[0]!.finish();
    await heavy;
    await soon();
    expect(underWay.map(({ model }) => model)).toEqual(['heavy', 'lite']);
    underWay[1]!.finish();
    expect((await lite).tracker).toBe(tracker);
  });

  it('gives up waiting when the signal says so', async () => {
    const { tracker } = slowTracker();
    const keeper = createTrackerKeeper(
      () => tracker,
      () => undefined,
    );
    const controller = new AbortController();
    const ready = keeper.ready('full', controller.signal);
    controller.abort(new Error('enough'));
    await expect(ready).rejects.toThrow('enough');
  });
});
