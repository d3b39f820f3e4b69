import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import type { FrameLeg } from '#core/keypoints/frameLeg';
import { laneAngles } from '#ui/drawing/laneAngles';
import { laneShape } from '#ui/drawing/laneShape';

const limits = { 'knee-angle': { least: -7, most: 12 } };
const square = { inwardDeg: 12, straightDeg: 0, outwardDeg: -7 };
const upright: FrameLeg = {
  hip: { x: 100, y: 100 },
  knee: { x: 104, y: 250 },
  ankle: { x: 100, y: 400 },
  heel: { x: 96, y: 410 },
  toe: { x: 92, y: 450 },
};

describe('laneShape(leg, side, angles)', () => {
  it('runs straight from the foot’s centre to the hip in a square view, wider where the limit is wider', () => {
    const { inward, outward } = laneShape(upright, 'right', square)!;
    // Knee half-way down 300 px: 150 tan 6 deg = 15.766 inward (picture's right), 150 tan 3.5 deg = 9.174 outward.
    for (const { x } of inward) expect(x).toBeCloseTo(115.766, 3);
    for (const { x } of outward) expect(x).toBeCloseTo(90.826, 3);
    // Foot's centre: (410 + 450) / 2 = 430.
    expect(inward.map(({ y }) => Math.round(y))).toEqual([100, 250, 430]);
  });

  it('turns its inward edge to the other side for the other leg', () => {
    expect(laneShape(upright, 'left', square)!.inward[0].x).toBeCloseTo(84.234, 3);
  });

  it('bends where the view makes a straight knee look bent, and keeps standing on foot and hip', () => {
    const { inward, outward } = laneShape(upright, 'right', {
      inwardDeg: 20,
      straightDeg: 10,
      outwardDeg: 0,
    })!;
    // 150 tan 10 = 26.449 and 0 at the knee; 150 tan 5 = 13.123 is taken off at the ends.
    expect(inward[1].x).toBeCloseTo(126.449, 3);
    expect(inward[0].x).toBeCloseTo(113.326, 3);
    expect(outward[1].x).toBeCloseTo(100, 9);
    expect(outward[2].x).toBeCloseTo(86.877, 3);
  });

  it('ends at the ankle where the foot is unseen', () => {
    expect(laneShape({ ...upright, toe: null }, 'right', square)!.inward[2].y).toBeCloseTo(400, 9);
  });

  it.each(['hip', 'knee', 'ankle'] as const)('is missing without the %s', (joint) => {
    expect(laneShape({ ...upright, [joint]: null }, 'right', square)).toBeNull();
  });

  it('is missing where hip and ankle coincide, and present for a knee below the ankle', () => {
    expect(laneShape({ ...upright, ankle: upright.hip }, 'right', square)).toBeNull();
    expect(laneShape({ ...upright, knee: { x: 100, y: 460 } }, 'right', square)).not.toBeNull();
  });
});

describe('laneAngles(leg, side, limits, measuredDeg)', () => {
  it('leaves the limits as they are where the picture shows what was measured, or nothing was', () => {
    const pictureDeg = kneeProjectionAngleDeg(upright.hip!, upright.knee!, upright.ankle!, 'right')!;
    expect(laneAngles(upright, 'right', limits, pictureDeg)).toEqual(square);
    expect(laneAngles(upright, 'right', limits, null)).toEqual(square);
    expect(laneAngles({ ...upright, hip: null }, 'right', limits, 3)).toEqual(square);
  });

  it('moves both edges by what the view adds', () => {
    const straight = { ...upright, knee: { x: 100, y: 250 } };
    // The picture shows 0 where -6 was measured: the view adds 6.
    expect(laneAngles(straight, 'left', limits, -6)).toEqual({
      inwardDeg: 18,
      straightDeg: 6,
      outwardDeg: -1,
    });
  });
});

describe('laneShape(leg, side, laneAngles(leg, side, limits, measuredDeg))', () => {
  it('holds the knee exactly when the measured angle is within the limits, whatever the view', () => {
    const px = fc.double({ min: -60, max: 60, noNaN: true });
    const degrees = fc.double({ min: -30, max: 30, noNaN: true });
    const side = fc.constantFrom('left' as const, 'right' as const);
    fc.assert(
      fc.property(px, px, px, degrees, side, (a, b, c, measuredDeg, which) => {
        const knee = { x: 100 + a, y: 250 + b };
        const leg = { ...upright, knee, ankle: { x: 100 + c, y: 400 } };
        const excess = Math.max(
          measuredDeg - limits['knee-angle'].most,
          limits['knee-angle'].least - measuredDeg,
        );
        fc.pre(Math.abs(excess) > 1e-6);
        const { inward, outward } = laneShape(leg, which, laneAngles(leg, which, limits, measuredDeg))!;
        // The knee lies on the line through both edges' knee points: between them when the parts add up.
        const part = (edge: typeof inward) => Math.hypot(edge[1].x - knee.x, edge[1].y - knee.y);
        const width = Math.hypot(inward[1].x - outward[1].x, inward[1].y - outward[1].y);
        expect(part(inward) + part(outward) <= width + 1e-7).toBe(excess < 0);
      }),
    );
  });
});
