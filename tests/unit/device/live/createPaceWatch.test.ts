import { describe, expect, it } from 'vitest';
import { createPaceWatch } from '#device/live/createPaceWatch';

describe('createPaceWatch()(nowMs, trackedFps)', () => {
  it('bears a hiccup', () => {
    const watch = createPaceWatch();
    expect(watch(0, 15)).toBe(true);
    expect(watch(1000, 4)).toBe(true);
    expect(watch(3900, 4)).toBe(true);
    expect(watch(4000, 8)).toBe(true);
    expect(watch(6900, 5)).toBe(true);
  });

  it('ends live feedback after three slow seconds, for good', () => {
    const watch = createPaceWatch();
    watch(500, 7.9);
    expect(watch(3499, 7)).toBe(true);
    expect(watch(3500, 7)).toBe(false);
    expect(watch(9000, 30)).toBe(false);
  });
});
