import { describe, expect, it } from 'vitest';
import { reasonCode } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import { kneeStateAt } from '#core/scoring/kneeStateAt';
import { picturePointing } from '#ui/drawing/verdictForm';

const limits = { 'knee-angle': { least: -6, most: 10 } };
const measurement = {
  timesMs: Float64Array.of(0, 100, 200, 300, 400),
  curves: {
    'knee-angle': {
      values: Float64Array.of(1, 9, 13, -9, 0),
      missing: Uint8Array.of(0, 0, 0, 0, reasonCode('joint-unseen')),
    },
  },
  repetitions: [
    { loadedFrom: 1, loadedTo: 2, ranges: { 'knee-angle': { max: { band: 2 }, min: { band: 5 } } } },
    { loadedFrom: 3, loadedTo: 4, ranges: { 'knee-angle': { max: { band: 7 }, min: { band: 4 } } } },
  ],
} as unknown as Measurement;

describe('kneeStateAt(measurement, limits, timeMs, sureness)', () => {
  it.each([
    [0, 'in', 'inward'],
    [90, 'cant-tell', 'inward'],
    [210, 'out', 'inward'],
    [300, 'probably-out', 'outward'],
  ])('at %f ms says %s, %s', (timeMs, verdict, direction) => {
    const state = kneeStateAt(measurement, limits, timeMs, 0.8);
    expect(state.verdict).toBe(verdict);
    if (verdict !== 'in') expect(state.direction).toBe(direction);
  });

  it('uses the error band of the repetition, and the widest one outside of all', () => {
    const [first, second] = measurement.repetitions;
    // 13 is 3 beyond 10: beyond a band of 2, within the widest of 7.
    expect(kneeStateAt(measurement, limits, 200, 0.8).verdict).toBe('out');
    const outside = { ...measurement, repetitions: [{ ...first!, loadedTo: 1 }, second!] };
    expect(kneeStateAt(outside, limits, 200, 0.8).verdict).toBe('cant-tell');
  });

  it('says not measured where there is no angle or no sample', () => {
    expect(kneeStateAt(measurement, limits, 400, 0.8)).toEqual({
      verdict: 'not-measured',
      direction: null,
      deg: null,
      reason: 'joint-unseen',
    });
    const empty = { ...measurement, timesMs: new Float64Array() };
    expect(kneeStateAt(empty, limits, 0, 0.8).verdict).toBe('not-measured');
  });
});

describe('picturePointing(side, direction)', () => {
  it('points to the picture’s middle for inward, seen by somebody who faces the person', () => {
    expect(picturePointing('right', 'inward')).toBe('right');
    expect(picturePointing('left', 'inward')).toBe('left');
    expect(picturePointing('right', 'outward')).toBe('left');
    expect(picturePointing('left', 'outward')).toBe('right');
    expect(picturePointing('left', 'outward', true)).toBe('left');
    expect(picturePointing('left', 'inward', true)).toBe('right');
  });
});
