import fc from 'fast-check';
import { vec2, vec3 } from 'gl-matrix';
import { describe, expect, it } from 'vitest';
import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import type { Point } from '#core/geometry/point';
import { otherSide, sides } from '#core/protocol/side';
import { anyLeg, mirrored, moved, rotated, scaled } from '../../../support/legs';

/** Rounding of coordinates up to 4000 px, joints 20 px apart or more, degrees. */
const roundingDeg = 1e-7;
/** gl-matrix measures by acos of a dot product, which is blunt near 0 and 180 degrees. */
const acosDeg = 1e-5;

const angle = ([hip, knee, ankle]: readonly Point[], side: 'left' | 'right') =>
  kneeProjectionAngleDeg(hip!, knee!, ankle!, side);
const leg = (...joints: [number, number][]) => joints.map(([x, y]) => ({ x, y }));

describe('kneeProjectionAngleDeg(hip, knee, ankle, side)', () => {
  it('measures a knee that is inward', () => {
    // Left leg, on the picture's right: thigh (-20, 200), shank (20, 200); 2 atan(20 / 200) = 11.4212 degrees.
    expect(angle(leg([300, 100], [280, 300], [300, 500]), 'left')).toBeCloseTo(11.4212, 4);
  });

  it('measures a knee that is outward as negative', () => {
    // Right leg, on the picture's left: thigh (-30, 170), shank (45, 210);
    // atan(30 / 170) + atan(45 / 210) = 10.008 + 12.095 = 22.103 degrees.
    expect(angle(leg([150, 90], [120, 260], [165, 470]), 'right')).toBeCloseTo(-22.103, 3);
  });

  it('reads the same picture as inward for one leg and outward for the other', () => {
    const joints = leg([210, 80], [190, 290], [220, 480]);
    expect(angle(joints, 'left')).toBe(-angle(joints, 'right')!);
  });

  it.each(sides)('is +0 for a straight %s leg, upright or leaning', (side) => {
    expect(angle(leg([70, 10], [70, 250], [70, 460]), side)).toBe(0);
    expect(angle(leg([70, 10], [90, 50], [120, 110]), side)).toBe(0);
  });

  it('is 90 degrees where the shank is square to the thigh', () => {
    expect(angle(leg([50, 20], [50, 120], [130, 120]), 'left')).toBe(90);
  });

  it('is 180 degrees where the shank folds back onto the thigh', () => {
    expect(Math.abs(angle(leg([60, 30], [60, 230], [60, 90]), 'right')!)).toBe(180);
  });

  it('is null where two joints coincide', () => {
    expect(angle(leg([40, 50], [40, 50], [45, 260]), 'left')).toBeNull();
    expect(angle(leg([40, 50], [52, 190], [52, 190]), 'left')).toBeNull();
    expect(angle(leg([40, 50], [40, 50], [40, 50]), 'left')).toBeNull();
  });

  it('is measured where only hip and ankle coincide', () => {
    expect(Math.abs(angle(leg([80, 100], [90, 300], [80, 100]), 'left')!)).toBe(180);
  });

  it('has the size that gl-matrix gives for angle, and the sign of its cross product', () => {
    fc.assert(
      fc.property(anyLeg, ([hip, knee, ankle]) => {
        const thigh = vec2.fromValues(knee.x - hip.x, knee.y - hip.y);
        const shank = vec2.fromValues(ankle.x - knee.x, ankle.y - knee.y);
        const expectedDeg = (vec2.angle(thigh, shank) * 180) / Math.PI;
        const turn = vec2.cross(vec3.create(), thigh, shank)[2]!;
        const ours = kneeProjectionAngleDeg(hip, knee, ankle, 'right')!;
        expect(Math.abs(Math.abs(ours) - expectedDeg)).toBeLessThan(acosDeg);
        if (expectedDeg > acosDeg && expectedDeg < 180 - acosDeg)
          expect(Math.sign(ours)).toBe(Math.sign(turn));
      }),
    );
  });

  it('stays the same when the picture is shifted, scaled or turned', () => {
    fc.assert(
      fc.property(
        anyLeg,
        fc.constantFrom(...sides),
        fc.integer({ min: -900, max: 900 }),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (joints, side, shiftPx, factor, turnDeg) => {
          const before = angle(joints, side)!;
          // Folded back, +180 and -180 are the same direction.
          fc.pre(Math.abs(before) < 179.9);
          for (const after of [moved(joints, shiftPx), scaled(joints, factor), rotated(joints, turnDeg)])
            expect(Math.abs(angle(after, side)! - before)).toBeLessThan(roundingDeg);
        },
      ),
    );
  });

  it('gives the mirrored leg of the other side the same angle', () => {
    fc.assert(
      fc.property(anyLeg, fc.constantFrom(...sides), (joints, side) => {
        const before = angle(joints, side)!;
        fc.pre(Math.abs(before) < 179.9);
        expect(Math.abs(angle(mirrored(joints), otherSide(side))! - before)).toBeLessThan(roundingDeg);
      }),
    );
  });
});
