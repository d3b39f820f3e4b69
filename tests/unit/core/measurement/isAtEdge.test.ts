import { describe, expect, it } from 'vitest';
import { reasonCode } from '#core/measurement/curve';
import { isAtEdge } from '#core/measurement/isAtEdge';

/** 30 samples, 40 ms apart, of which some are missing. */
const timesMs = Float64Array.from({ length: 30 }, (_, i) => 40 * i);
function at(sample: number, missing: number[], from = 0, to = 29) {
  const curve = { values: new Float64Array(30), missing: new Uint8Array(30) };
  for (const i of missing) curve.missing[i] = reasonCode('joint-unseen');
  return isAtEdge(curve, timesMs, sample, from, to);
}

describe('isAtEdge(curve, timesMs, sample, from, to)', () => {
  it('holds within a tenth of a second of a gap, before and after it', () => {
    // Two samples are 80 ms, three 120.
    expect([7, 8, 9, 11, 12, 13].map((sample) => at(sample, [10]))).toEqual([
      false,
      true,
      true,
      true,
      true,
      false,
    ]);
  });

  it('does not count what is missing outside the loaded time', () => {
    expect(at(8, [7], 8, 20)).toBe(false);
    expect(at(20, [21], 8, 20)).toBe(false);
    expect(at(20, [21], 8, 21)).toBe(true);
  });

  it('does not hold at the end of a curve that was seen whole', () => {
    expect([at(0, []), at(29, [])]).toEqual([false, false]);
  });
});
