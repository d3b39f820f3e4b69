import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { FrameLeg } from '../../../src/drawing/frameLeg';
import { laneShape, type LaneShape } from '../../../src/drawing/laneShape';
import { kneeProjectionAngleDeg } from '../../../src/geometry/kneeProjectionAngleDeg';
import type { Point } from '../../../src/geometry/point';

const limits = { kneeInwardDeg: 12, kneeOutwardDeg: 7 };
const upright: FrameLeg = {
  hip: { x: 100, y: 100 },
  knee: { x: 104, y: 250 },
  ankle: { x: 100, y: 400 },
  heel: { x: 96, y: 410 },
  toe: { x: 92, y: 450 },
};

/** Whether a point lies between the two long edges. */
function isBetween([hipInward, footInward, , hipOutward]: LaneShape, { x, y }: Point): boolean {
  const along = { x: footInward.x - hipInward.x, y: footInward.y - hipInward.y };
  const side = (from: Point) => along.x * (y - from.y) - along.y * (x - from.x);
  return side(hipInward) * side(hipOutward) <= 0;
}

describe('laneShape(leg, side, limits)', () => {
  it('stands on the foot’s centre and rises to the hip, wider where the limit is wider', () => {
    const [hipInward, footInward, footOutward, hipOutward] = laneShape(upright, 'right', limits)!;
    // Knee half-way down 300 px: 150 tan 6 deg = 15.766 inward (picture's right), 150 tan 3.5 deg = 9.174 outward.
    expect(hipInward.x).toBeCloseTo(115.766, 3);
    expect(hipOutward.x).toBeCloseTo(90.826, 3);
    expect([hipInward.y, hipOutward.y]).toEqual([100, 100]);
    // Foot's centre: (410 + 450) / 2 = 430.
    expect(footInward.y).toBeCloseTo(430, 9);
    expect(footOutward.y).toBeCloseTo(430, 9);
  });

  it('turns its inward edge to the other side for the other leg', () => {
    const [hipInward] = laneShape(upright, 'left', limits)!;
    expect(hipInward.x).toBeCloseTo(84.234, 3);
  });

  it('holds the knee exactly when the angle is within the limits', () => {
    const coordinate = fc.double({ min: -60, max: 60, noNaN: true });
    fc.assert(
      fc.property(
        coordinate,
        coordinate,
        coordinate,
        fc.constantFrom('left' as const, 'right' as const),
        (a, b, c, side) => {
          const leg = { ...upright, knee: { x: 100 + a, y: 250 + b }, ankle: { x: 100 + c, y: 400 } };
          const deg = kneeProjectionAngleDeg(leg.hip!, leg.knee, leg.ankle, side)!;
          const excess = Math.max(deg - limits.kneeInwardDeg, -deg - limits.kneeOutwardDeg);
          fc.pre(Math.abs(excess) > 1e-6);
          expect(isBetween(laneShape(leg, side, limits)!, leg.knee)).toBe(excess < 0);
        },
      ),
    );
  });

  it('ends at the ankle where the foot is unseen', () => {
    const [, footInward] = laneShape({ ...upright, toe: null }, 'right', limits)!;
    expect(footInward.y).toBeCloseTo(400, 9);
  });

  it.each(['hip', 'knee', 'ankle'] as const)('is missing without the %s', (joint) => {
    expect(laneShape({ ...upright, [joint]: null }, 'right', limits)).toBeNull();
  });

  it('is missing where hip and ankle coincide, and stands for a knee below the ankle', () => {
    expect(laneShape({ ...upright, ankle: upright.hip }, 'right', limits)).toBeNull();
    expect(laneShape({ ...upright, knee: { x: 100, y: 460 } }, 'right', limits)).not.toBeNull();
  });
});
