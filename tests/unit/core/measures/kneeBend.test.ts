import { describe, expect, it } from 'vitest';
import { depthOfBend, kneeBendDeg } from '#core/measures/kneeBend';

describe('kneeBendDeg(depth)', () => {
  it('is the bend of a knee whose thigh and shank lean alike', () => {
    expect(kneeBendDeg(0)).toBe(0);
    // cos 45° = .7071, cos 22.5° = .9239.
    expect(kneeBendDeg(1 - Math.SQRT1_2)).toBeCloseTo(90, 10);
    expect(kneeBendDeg(1 - 0.9239)).toBeCloseTo(45, 1);
    expect(kneeBendDeg(1)).toBeCloseTo(180, 10);
  });

  it('clamps what no leg can show', () => {
    expect(kneeBendDeg(-0.1)).toBe(0);
    expect(kneeBendDeg(1.2)).toBe(180);
  });
});

describe('depthOfBend(bendDeg)', () => {
  it('is its inverse', () => {
    for (const deg of [0, 12, 60, 90, 140]) expect(kneeBendDeg(depthOfBend(deg))).toBeCloseTo(deg, 6);
    expect(depthOfBend(60)).toBeCloseTo(0.134, 3);
  });
});
