import { describe, expect, it } from 'vitest';
import { reasonCode } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import { kneeStateAt } from '#ui/drawing/kneeStateAt';
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

describe('kneeStateAt(measurement, limits, timeMs)', () => {
  it.each([
    [0, 'in-line', 'inward'],
    [90, 'near-limit', 'inward'],
    [210, 'out-of-line', 'inward'],
    [300, 'near-limit', 'outward'],
  ])('at %f ms says %s, %s', (timeMs, verdict, direction) => {
    const state = kneeStateAt(measurement, limits, timeMs);
    expect(state.verdict).toBe(verdict);
    if (verdict !== 'in-line') expect(state.direction).toBe(direction);
  });

  it('uses the error band of the repetition, and the widest one outside of all', () => {
    const [first, second] = measurement.repetitions;
    // 13 is 3 beyond 10: beyond a band of 2, within the widest of 7.
    expect(kneeStateAt(measurement, limits, 200).verdict).toBe('out-of-line');
    const outside = { ...measurement, repetitions: [{ ...first!, loadedTo: 1 }, second!] };
    expect(kneeStateAt(outside, limits, 200).verdict).toBe('near-limit');
  });

  it('says not measured where there is no angle or no sample', () => {
    expect(kneeStateAt(measurement, limits, 400)).toEqual({
      verdict: 'not-measured',
      direction: null,
      deg: null,
      reason: 'joint-unseen',
    });
    const empty = { ...measurement, timesMs: new Float64Array() };
    expect(kneeStateAt(empty, limits, 0).verdict).toBe('not-measured');
  });
});

describe('picturePointing(side, direction)', () => {
  it('points to the picture’s middle for inward, seen by somebody who faces the person', () => {
    expect(picturePointing('right', 'inward')).toBe('right');
    expect(picturePointing('left', 'inward')).toBe('left');
    expect(picturePointing('right', 'outward')).toBe('left');
    expect(picturePointing('left', 'outward')).toBe('right');
  });
});
