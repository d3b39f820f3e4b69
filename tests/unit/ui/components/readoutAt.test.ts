import { describe, expect, it } from 'vitest';
import { reasonCode } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import { defaultLimits } from '#core/protocol/limits';
import { plotScales, valueSpan } from '#ui/components/plotScales';
import { readoutAt } from '#ui/components/readoutAt';
import { tickWords } from '#ui/components/tickWords';

const measurement = {
  timesMs: Float64Array.of(0, 100, 200),
  curves: {
    'knee-angle': {
      values: Float64Array.of(14.2, -3.4, 0),
      missing: Uint8Array.of(0, 0, reasonCode('thigh-foreshortened')),
    },
  },
  repetitions: [{ ranges: { 'knee-angle': { max: { value: 33, band: 4 }, min: { value: -4, band: 3 } } } }],
} as unknown as Measurement;

describe('readoutAt(measurement, timeMs)', () => {
  it('says the angle with its band, or why there is none', () => {
    expect(readoutAt(measurement, 20)).toBe('0.0 s: 14° in ±4');
    expect(readoutAt(measurement, 100)).toBe('0.1 s: 3° out ±3');
    expect(readoutAt({ ...measurement, repetitions: [] }, 100)).toBe('0.1 s: 3° outward');
    expect(readoutAt(measurement, 200)).toBe('0.2 s: not measured, thigh points at the camera');
  });
});

describe('plotScales(measurement, limits, size)', () => {
  it('shows every peak and both limits with room, inward up', () => {
    const { x, y } = plotScales(
      measurement,
      { 'knee-angle': { least: -8, most: 10 } },
      { width: 500, height: 200 },
    );
    const [least, greatest] = y.domain();
    expect(greatest).toBeGreaterThan(37);
    expect(least).toBeLessThan(-8);
    expect(y(10)).toBeLessThan(y(-8));
    expect(x.domain()).toEqual([0, 200]);
  });
});

describe('valueSpan(measure, limits, values)', () => {
  it('holds 0, the values and the limits of any measure, also without a limit', () => {
    const limits = { ...defaultLimits, depth: { most: 0.29 } };
    const [least, most] = valueSpan('depth', limits, [0.1, 0.4]);
    expect(least).toBeLessThan(0);
    expect(most).toBeGreaterThan(0.4);
    expect(valueSpan('trunk-lean', limits, [])[1]).toBeGreaterThan(0);
  });
});

describe('tickWords(measure, value)', () => {
  it('writes a direction that has a word without its sign, and a share as per cent', () => {
    expect(tickWords('knee-angle', -10)).toBe('10°');
    expect(tickWords('depth', 0.25)).toBe('25 %');
    expect(tickWords('depth', -0.05)).toBe('−5 %');
  });
});
