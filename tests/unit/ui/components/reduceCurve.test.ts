import { describe, expect, it } from 'vitest';
import { reasonCode } from '#core/measurement/curve';
import { reduceCurve } from '#ui/components/reduceCurve';

function curve(values: (number | null)[]) {
  return {
    values: Float64Array.from(values, (value) => value ?? 0),
    missing: Uint8Array.from(values, (value) => (value === null ? reasonCode('joint-unseen') : 0)),
  };
}

describe('reduceCurve(curve, columns)', () => {
  it('keeps every sample of a short curve', () => {
    expect(reduceCurve(curve([3, 1, 4, 1]), 100)).toEqual({ runs: [[0, 1, 2, 3]], gaps: [] });
  });

  it('breaks where samples are missing and says why', () => {
    const { runs, gaps } = reduceCurve(curve([null, 5, 6, null, null, 7]), 100);
    expect(runs).toEqual([[1, 2], [5]]);
    expect(gaps).toEqual([
      { from: 0, to: 0, reason: 'joint-unseen' },
      { from: 3, to: 4, reason: 'joint-unseen' },
    ]);
  });

  it('draws 18,000 samples with a few thousand points and loses no peak', () => {
    const values = Array.from({ length: 18_000 }, (_, i) => Math.sin(i / 50) * 5);
    values[7777] = 31;
    values[12_345] = -29;
    const [run] = reduceCurve(curve(values), 700).runs;
    expect(run!.length).toBeLessThan(3000);
    expect(run).toContain(7777);
    expect(run).toContain(12_345);
    expect(run!.every((sample, i) => i === 0 || sample > run![i - 1]!)).toBe(true);
    expect([run![0], run!.at(-1)]).toEqual([0, 17_999]);
  });

  it('is empty for an empty curve', () => {
    expect(reduceCurve(curve([]), 100)).toEqual({ runs: [], gaps: [] });
  });
});
