import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { footHeadingDeg } from '../../../src/view/footHeadingDeg';

const joint = (...xPx: number[]) => ({ xPx: Float64Array.from(xPx), yPx: new Float64Array(xPx.length) });
const all = (...xPx: number[]) => new Uint8Array(xPx.length).fill(1);

/** Foot and shank as shares of body height: Drillis & Contini (from memory), the figures of the synthetic person too. */
const [foot, shank] = [0.152, 0.246];

describe('footHeadingDeg(heel, toe, when, shankPx)', () => {
  it('tells the direction from how far the toe stands beside the heel', () => {
    // A shank of 246 px belongs to a foot of 152 px: 76 px are half of it, and sin 30 = 0.5.
    expect(footHeadingDeg(joint(100), joint(176), all(1), 246)).toBeCloseTo(30, 9);
    expect(footHeadingDeg(joint(100), joint(24), all(1), 246)).toBeCloseTo(-30, 9);
    expect(footHeadingDeg(joint(100), joint(100), all(1), 246)).toBe(0);
  });

  it('takes the usual offset of the samples that count', () => {
    const [heel, toe] = [joint(0, 0, 0, 0), joint(20, 76, 100, -500)];
    expect(footHeadingDeg(heel, toe, Uint8Array.of(1, 1, 1, 0), 246)).toBeCloseTo(30, 9);
  });

  it('is 90 degrees at most, for a foot that looks longer than it is', () => {
    expect(footHeadingDeg(joint(0), joint(400), all(1), 246)).toBeCloseTo(90, 9);
  });

  it('is null where the foot is never seen', () => {
    expect(footHeadingDeg(joint(1), joint(2), Uint8Array.of(0), 246)).toBeNull();
  });

  it('gives the direction of a foot seen from far away back, whatever its size', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -80, max: 80, noNaN: true }),
        fc.double({ min: 100, max: 2000, noNaN: true }),
        (deg, heightPx) => {
          const aside = foot * heightPx * Math.sin((deg * Math.PI) / 180);
          expect(footHeadingDeg(joint(7), joint(7 + aside), all(1), shank * heightPx)).toBeCloseTo(deg, 6);
        },
      ),
    );
  });
});
