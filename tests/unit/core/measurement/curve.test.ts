import { describe, expect, it } from 'vitest';
import { curveReason, curveValue, missingReasons, reasonCode } from '#core/measurement/curve';

const curve = {
  values: Float64Array.of(0, 4.5, 0),
  missing: Uint8Array.of(0, 0, reasonCode('frames-missing')),
};

describe('curveValue(curve, sample)', () => {
  it('returns the value, 0 included, or null where it is missing', () => {
    expect([0, 1, 2].map((sample) => curveValue(curve, sample))).toEqual([0, 4.5, null]);
  });

  it('is null outside the curve', () => {
    expect(curveValue(curve, 3)).toBeNull();
  });
});

describe('curveReason(curve, sample)', () => {
  it('returns the reason, or null where there is a value or no sample', () => {
    expect([1, 2, 3].map((sample) => curveReason(curve, sample))).toEqual([null, 'frames-missing', null]);
  });
});

describe('reasonCode(reason)', () => {
  it('is 0 for a value that counts and different for every reason', () => {
    expect(reasonCode('none')).toBe(0);
    expect(new Set(missingReasons.map(reasonCode)).size).toBe(missingReasons.length);
  });
});
