import { describe, expect, it } from 'vitest';
import { reasonCode, type MissingReason } from '#core/measurement/curve';
import { summarise } from '#core/measurement/measureRepetition';

/** Numbers as they are, reasons where there is none; 40 ms apart. */
function summary(of: (number | MissingReason)[], from = 0, to = of.length - 1) {
  const curve = {
    values: Float64Array.from(of, (value) => (typeof value === 'number' ? value : 0)),
    missing: Uint8Array.from(of, (value) => (typeof value === 'number' ? 0 : reasonCode(value))),
  };
  const timesMs = Float64Array.from(of, (_, i) => 40 * i);
  return summarise(curve, timesMs, from, to);
}

describe('summarise(curve, timesMs, from, to)', () => {
  it('finds both ends of a curve with their moments', () => {
    expect(summary([3, 9, -4, 6])).toEqual({
      measuredShare: 1,
      mainReason: null,
      max: { value: 9, sample: 1, timeMs: 40 },
      min: { value: -4, sample: 2, timeMs: 80 },
    });
  });

  it('covers one sample to another, both included', () => {
    const { max, min, measuredShare } = summary([50, 2, 7, 5, -50], 1, 3);
    expect([max!.value, min!.value, measuredShare]).toEqual([7, 2, 1]);
  });

  it('gives the share that was measured and the main reason for the rest', () => {
    const { measuredShare, mainReason, max, min } = summary([
      'joint-unseen',
      -3,
      'thigh-foreshortened',
      'joint-unseen',
      -2,
    ]);
    expect(measuredShare).toBeCloseTo(0.4, 12);
    expect(mainReason).toBe('joint-unseen');
    // What is missing does not count as 0.
    expect([max!.value, min!.value]).toEqual([-2, -3]);
  });

  it('has neither end where nothing was measured', () => {
    expect(summary(['no-person', 'no-person'])).toEqual({
      measuredShare: 0,
      mainReason: 'no-person',
      max: null,
      min: null,
    });
    expect(summary([])).toEqual({ measuredShare: 0, mainReason: null, max: null, min: null });
  });
});
