import fc from 'fast-check';
import { vec2, vec3 } from 'gl-matrix';
import { describe, expect, it } from 'vitest';
import { kneeLineDeviation } from '#core/geometry/kneeLineDeviation';
import { distancePx, type Point } from '#core/geometry/point';
import { otherSide, sides } from '#core/protocol/side';
import { anyLeg, mirrored, moved, rotated, scaled } from '../../../support/legs';

/** Rounding of coordinates up to 4000 px as a share of a leg of 430 px. */
const rounding = 1e-9;
/** gl-matrix keeps vectors in 32 bits: 1 in 10 million of products up to 4 million square px. */
const single = 1e-4;

const legPx = 430;
const deviation = ([hip, knee, ankle]: readonly Point[], side: 'left' | 'right', legLengthPx = legPx) =>
  kneeLineDeviation(hip!, knee!, ankle!, side, legLengthPx);
const leg = (...joints: [number, number][]) => joints.map(([x, y]) => ({ x, y }));

describe('kneeLineDeviation(hip, knee, ankle, side, legLengthPx)', () => {
  it('measures a knee inside a plumb line', () => {
    // Left leg on the picture's right, knee 43 px towards the middle: 43 / 430 = 0.1.
    expect(deviation(leg([300, 100], [257, 290], [300, 500]), 'left')).toBeCloseTo(0.1, 12);
  });

  it('measures a knee outside a leaning line as negative', () => {
    // Right leg: line (60, 80) long 100, hip to knee (10, 40): cross 60 x 40 - 80 x 10 = 1600; 1600 / 100 = 16 px
    // towards the picture's left, which is outward for the right leg: -16 / 320 = -0.05.
    expect(deviation(leg([100, 200], [110, 240], [160, 280]), 'right', 320)).toBeCloseTo(-0.05, 12);
  });

  it.each(sides)('is +0 for a knee on the line of the %s leg', (side) => {
    expect(deviation(leg([70, 10], [70, 250], [70, 460]), side)).toBe(0);
    expect(deviation(leg([70, 10], [90, 50], [120, 110]), side)).toBe(0);
  });

  it('is null where hip and ankle coincide', () => {
    expect(deviation(leg([80, 100], [95, 300], [80, 100]), 'left')).toBeNull();
  });

  it('is 0 where the knee coincides with hip or ankle', () => {
    expect(deviation(leg([80, 100], [80, 100], [85, 480]), 'left')).toBe(0);
    expect(deviation(leg([80, 100], [85, 480], [85, 480]), 'right')).toBe(0);
  });

  it.each([0, -7, NaN])('refuses a leg length of %d px', (legLengthPx) => {
    expect(() => deviation(leg([1, 2], [3, 40], [5, 90]), 'left', legLengthPx)).toThrow(
      new RangeError(`Leg length must be above 0 px, got ${legLengthPx}.`),
    );
  });

  it('has the size given by the cross product of gl-matrix', () => {
    fc.assert(
      fc.property(anyLeg, ([hip, knee, ankle]) => {
        fc.pre(distancePx(hip, ankle) > 20);
        const line = vec2.fromValues(ankle.x - hip.x, ankle.y - hip.y);
        const toKnee = vec2.fromValues(knee.x - hip.x, knee.y - hip.y);
        const offPx = vec2.cross(vec3.create(), line, toKnee)[2]! / vec2.length(line);
        expect(Math.abs(kneeLineDeviation(hip, knee, ankle, 'left', legPx)! - offPx / legPx)).toBeLessThan(
          single,
        );
      }),
    );
  });

  it('stays the same when the picture is shifted, turned, or scaled together with the leg', () => {
    fc.assert(
      fc.property(
        anyLeg,
        fc.constantFrom(...sides),
        fc.integer({ min: -900, max: 900 }),
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (joints, side, shiftPx, factor, turnDeg) => {
          fc.pre(distancePx(joints[0], joints[2]) > 20);
          const before = deviation(joints, side)!;
          const after = [
            deviation(moved(joints, shiftPx), side)!,
            deviation(rotated(joints, turnDeg), side)!,
            deviation(scaled(joints, factor), side, legPx * factor)!,
          ];
          for (const value of after) expect(Math.abs(value - before)).toBeLessThan(rounding);
        },
      ),
    );
  });

  it('gives the mirrored leg of the other side the same deviation', () => {
    fc.assert(
      fc.property(anyLeg, fc.constantFrom(...sides), (joints, side) => {
        fc.pre(distancePx(joints[0], joints[2]) > 20);
        const before = deviation(joints, side)!;
        expect(Math.abs(deviation(mirrored(joints), otherSide(side))! - before)).toBeLessThan(rounding);
      }),
    );
  });
});
