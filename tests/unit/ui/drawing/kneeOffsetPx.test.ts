import { describe, expect, it } from 'vitest';
import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import { kneeOffsetPx } from '#ui/drawing/kneeOffsetPx';

describe('kneeOffsetPx(toHipPx, toAnklePx, angleDeg)', () => {
  it('gives the hand-worked offset at equal distances', () => {
    // p = q: both halves turn by 10 degrees of 20, so h = 200 tan 10 deg = 35.265.
    expect(kneeOffsetPx(200, 200, 20)).toBeCloseTo(35.265, 3);
    // 300 tan 5 deg = 26.247
    expect(kneeOffsetPx(300, 300, 10)).toBeCloseTo(26.247, 3);
  });

  it.each([
    [120, 310, 1],
    [250, 180, 10],
    [77, 340, 30],
    [400, 33, 17],
  ])('agrees with the measured angle for %f, %f px and %f degrees', (p, q, deg) => {
    const knee = { x: kneeOffsetPx(p, q, deg), y: p };
    // Upright line; a right leg's knee towards the picture's right is inward.
    const measured = kneeProjectionAngleDeg({ x: 0, y: 0 }, knee, { x: 0, y: p + q }, 'right');
    expect(measured).toBeCloseTo(deg, 9);
  });

  it('changes its sign with the angle', () => {
    expect(kneeOffsetPx(120, 310, -14)).toBeCloseTo(-kneeOffsetPx(120, 310, 14), 9);
  });

  it('is 0 for a straight leg and grows with the scale of the picture', () => {
    expect(kneeOffsetPx(150, 250, 0)).toBe(0);
    expect(kneeOffsetPx(300, 500, 12)).toBeCloseTo(2 * kneeOffsetPx(150, 250, 12), 9);
  });

  it.each([
    [0, 5, 3],
    [5, -1, 3],
    [5, 5, -90],
    [5, 5, 90],
    [NaN, 5, 3],
  ])('refuses %f, %f, %f', (p, q, deg) => {
    expect(() => kneeOffsetPx(p, q, deg)).toThrow(RangeError);
  });
});
