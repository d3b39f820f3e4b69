import fc from 'fast-check';
import { vec3 } from 'gl-matrix';
import { describe, expect, it } from 'vitest';
import { headingDeg, toBodyFrame } from '#core/view/bodyFrame';
import type { Path } from '#core/view/path';

const path = (x: number, y: number, z: number): Path => ({
  x: Float64Array.of(x),
  y: Float64Array.of(y),
  z: Float64Array.of(z),
});
const first = ({ x, y, z }: Path) => [x[0]!, y[0]!, z[0]!] as const;
const coordinate = fc.double({ min: -10, max: 10, noNaN: true });
const angle = fc.double({ min: -80, max: 80, noNaN: true });

describe('toBodyFrame(path, yawDeg)', () => {
  it('leaves a body that faces the camera as it is', () => {
    expect(first(toBodyFrame(path(2, -3, 5), 0))).toEqual([2, -3, 5]);
  });

  it('turns what is in front of a turned body to straight ahead', () => {
    // A body turned by 30 degrees to the picture's right: its knee, one length ahead, stands sin 30 = 0.5 to the right
    // and cos 30 = 0.866 nearer. Square to it, the knee is neither left nor right, and 1 nearer.
    const [x, y, z] = first(toBodyFrame(path(0.5, 0.4, -Math.cos(Math.PI / 6)), 30));
    expect(x).toBeCloseTo(0, 12);
    expect(y).toBe(0.4);
    expect(z).toBeCloseTo(-1, 12);
  });

  it('equals the rotation about the vertical of gl-matrix 3, and keeps lengths', () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, angle, (x, y, z, yawDeg) => {
        const ours = first(toBodyFrame(path(x, y, z), yawDeg));
        const theirs = vec3.rotateY(vec3.create(), [x, y, z], [0, 0, 0], (yawDeg * Math.PI) / 180);
        // gl-matrix keeps 32 bits: a grain of 1e-6 at 10.
        ours.forEach((value, axis) => expect(Math.abs(value - theirs[axis]!)).toBeLessThan(1e-5));
        expect(Math.hypot(...ours)).toBeCloseTo(Math.hypot(x, y, z), 9);
      }),
    );
  });

  it('is undone by turning back', () => {
    fc.assert(
      fc.property(coordinate, coordinate, coordinate, angle, (x, y, z, yawDeg) => {
        const back = first(toBodyFrame(toBodyFrame(path(x, y, z), yawDeg), -yawDeg));
        [x, y, z].forEach((value, axis) => expect(back[axis]).toBeCloseTo(value, 9));
      }),
    );
  });
});

describe('headingDeg(from, to, sample)', () => {
  it.each([
    ['towards the camera', 0, -1, 0],
    ["towards the picture's right and the camera", 1, -1, 45],
    ["towards the picture's left and the camera", -1, -Math.sqrt(3), -30],
    ["straight to the picture's right", 2, 0, 90],
    ['away from the camera', 0, 3, 180],
  ])('of %s', (_, x, z, deg) => {
    expect(headingDeg(path(4, 1, 20), path(4 + x, -2, 20 + z), 0)).toBeCloseTo(deg, 12);
  });

  it('becomes 0 when the body is turned square by it', () => {
    fc.assert(
      fc.property(angle, (deg) => {
        const rad = (deg * Math.PI) / 180;
        const knee = toBodyFrame(path(Math.sin(rad), 0, -Math.cos(rad)), deg);
        expect(headingDeg(path(0, 0, 0), knee, 0)).toBeCloseTo(0, 9);
      }),
    );
  });
});
