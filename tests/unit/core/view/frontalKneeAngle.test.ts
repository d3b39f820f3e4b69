import fc from 'fast-check';
import { vec2 } from 'gl-matrix';
import { describe, expect, it } from 'vitest';
import { otherSide, sides } from '#core/protocol/side';
import {
  frontalKneeAngleDeg,
  frontalKneeDeviation,
  medianWhere,
  squareToBody,
  thighShare,
  type FrontalLeg,
} from '#core/view/frontalKneeAngle';

type Place = readonly [x: number, y: number, z?: number];
const path = ([x, y, z = 0]: Place) => ({
  x: Float64Array.of(x),
  y: Float64Array.of(y),
  z: Float64Array.of(z),
});
const leg = (hip: Place, knee: Place, ankle: Place, thigh = 1): FrontalLeg => ({
  hip: path(hip),
  knee: path(knee),
  ankle: path(ankle),
  thigh,
});

describe('frontalKneeAngleDeg(leg, side, sample)', () => {
  it('is 0 for a straight leg, upright or leaning', () => {
    for (const side of sides) {
      expect(frontalKneeAngleDeg(leg([3, 0], [3, 1], [3, 2]), side, 0)).toBeCloseTo(0, 12);
      expect(frontalKneeAngleDeg(leg([3, 0], [4, 2], [5, 4]), side, 0)).toBeCloseTo(0, 12);
    }
  });

  it('is positive for a knee towards the midline', () => {
    // The left leg stands at larger x. Thigh down and 1 in 2 inward, shank straight down: atan(1 / 2) = 26.565 degrees.
    const inward = leg([4, 0], [3, 2], [3, 4]);
    expect(frontalKneeAngleDeg(inward, 'left', 0)).toBeCloseTo(26.565, 3);
    expect(frontalKneeAngleDeg(inward, 'right', 0)).toBeCloseTo(-26.565, 3);
    // Thigh and shank at right angles: the knee as far inward as hip and ankle are apart.
    expect(frontalKneeAngleDeg(leg([4, 0], [2, 2], [4, 4]), 'left', 0)).toBeCloseTo(90, 9);
  });

  it('does not depend on how far the joints are from the camera', () => {
    const flat = leg([4, 0], [3, 2], [3.5, 4]);
    const deep = leg([4, 0, 9], [3, 2, 7], [3.5, 4, 12]);
    expect(frontalKneeAngleDeg(deep, 'left', 0)).toBe(frontalKneeAngleDeg(flat, 'left', 0));
  });

  it('equals the angle between thigh and shank by gl-matrix 3, and changes sign when mirrored', () => {
    const part = fc.double({ min: 0.2, max: 2, noNaN: true });
    const aside = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        aside,
        part,
        aside,
        part,
        fc.constantFrom(...sides),
        (kneeX, kneeY, ankleX, shankY, side) => {
          const ankle: Place = [kneeX + ankleX, kneeY + shankY];
          const deg = frontalKneeAngleDeg(leg([0, 0], [kneeX, kneeY], ankle), side, 0);
          const theirs = (vec2.angle([kneeX, kneeY], [ankleX, shankY]) * 180) / Math.PI;
          // Their acos of 64-bit numbers loses half the digits near 0.
          expect(Math.abs(Math.abs(deg) - theirs)).toBeLessThan(1e-5);
          const mirrored = leg([0, 0], [-kneeX, kneeY], [-ankle[0], ankle[1]]);
          expect(frontalKneeAngleDeg(mirrored, otherSide(side), 0)).toBeCloseTo(deg, 9);
          expect(frontalKneeAngleDeg(mirrored, side, 0)).toBeCloseTo(-deg, 9);
        },
      ),
    );
  });
});

describe('squareToBody(leg, yawDeg)', () => {
  it('shows a knee that bends straight ahead of a turned body as in line', () => {
    const [sin, cos] = [Math.sin(Math.PI / 9), Math.cos(Math.PI / 9)]; // 20 degrees
    const turned = leg([0, 0, 0], [0.8 * sin, 0.6, -0.8 * cos], [0, 1.2, 0]);
    expect(frontalKneeAngleDeg(turned, 'left', 0)).toBeLessThan(-40);
    expect(frontalKneeAngleDeg(squareToBody(turned, 20), 'left', 0)).toBeCloseTo(0, 9);
    expect(squareToBody(turned, 20).thigh).toBe(1);
  });
});

describe('thighShare(leg, sample)', () => {
  it('is 1 upright, 0.6 for a thigh that points 0.8 of its length at the camera, 0 straight at it', () => {
    expect(thighShare(leg([0, 0], [0, 1.5], [0, 2], 1.5), 0)).toBe(1);
    expect(thighShare(leg([0, 0, 0], [0, 0.6, -0.8], [0, 2]), 0)).toBeCloseTo(0.6, 12);
    expect(thighShare(leg([0, 0, 0], [0, 0, -1], [0, 2]), 0)).toBe(0);
  });
});

describe('medianWhere(when, quantity)', () => {
  it('takes the middle of the samples that count, null where there is none', () => {
    const quantity = (i: number) => [5, 900, 8, 6][i]!;
    expect(medianWhere(Uint8Array.of(1, 0, 1, 1), quantity)).toBe(6);
    expect(medianWhere(new Uint8Array(4), quantity)).toBeNull();
  });
});

describe('frontalKneeDeviation(leg, side, sample)', () => {
  it('is the distance from the line hip to ankle as a share of thigh and shank together', () => {
    // The left knee is 1 towards the midline of an upright line; with a thigh of 3 the leg is 4 shanks long.
    const inward: [Place, Place, Place] = [
      [4, 0],
      [3, 2],
      [4, 4],
    ];
    expect(frontalKneeDeviation(leg(...inward, 1), 'left', 0)).toBeCloseTo(0.5, 12);
    expect(frontalKneeDeviation(leg(...inward, 3), 'left', 0)).toBeCloseTo(0.25, 12);
    expect(frontalKneeDeviation(leg(...inward, 3), 'right', 0)).toBeCloseTo(-0.25, 12);
  });

  it('is 0 where hip and ankle coincide, as the angle is where any two do', () => {
    expect(frontalKneeDeviation(leg([4, 0], [3, 2], [4, 0]), 'left', 0)).toBe(0);
    expect(frontalKneeAngleDeg(leg([4, 0], [4, 0], [4, 3]), 'left', 0)).toBe(0);
  });
});

describe('thighShare(leg, sample), away from the middle of the picture', () => {
  it('is the seen length of the thigh as a share of its own', () => {
    // 3 aside and 4 down are 5; of 10.
    expect(thighShare(leg([3, 4], [6, 8], [6, 9], 10), 0)).toBeCloseTo(0.5, 12);
  });
});
