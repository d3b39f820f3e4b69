import { describe, expect, it } from 'vitest';
import { closeFigures } from '#tools/commands/tools/benchClose';
import type { CloserTimes } from '#tools/headless/headlessPage';

const times: CloserTimes = {
  frames: 600,
  looked: 90,
  plainMs: [20_000, 25_000, 40_000],
  firstMs: [26_000, 25_500, 38_000],
  wholeMs: [52_000, 40_800, 57_000],
  device: { backend: 'wasm', threads: 2 },
};

describe('closeFigures(times, model)', () => {
  it('takes the median of each round’s own ratio', () => {
    const figures = closeFigures(times, 'full');
    expect(figures.firstAnswerRatio).toBeCloseTo(1.02, 12);
    expect(figures.firstAnswerRatios).toBe('1.30, 1.02, 0.95');
    expect(figures.wholeRatio).toBeCloseTo(1.6, 12);
    expect(figures.wholeRatios).toBe('2.00, 1.60, 1.50');
  });

  it('refuses to say what a look costs that did not take place', () => {
    expect(() => closeFigures({ ...times, looked: 0 }, 'full')).toThrow('No frame was looked at again.');
  });
});
