import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { otherSide, sides } from '#core/protocol/side';
import { footHeadingDeg } from '#core/view/footHeadingDeg';

const joint = (...xPx: number[]) => ({ xPx: Float64Array.from(xPx), yPx: new Float64Array(xPx.length) });
const all = (...xPx: number[]) => new Uint8Array(xPx.length).fill(1);

/** A shank of 220 px belongs to marks 110 px apart: 55 px are half of it, and sin 30 = 0.5. */
const shankPx = 220;
/** So far away that nothing is off the middle of the picture. */
const farPx = 1e12;
/** How far inward of the foot's axis its big toe is, degrees. */
const toeDeg = 5.5;

describe('footHeadingDeg(heel, toe, side, when, shankPx, focalPx)', () => {
  const left = (heel: ReturnType<typeof joint>, toe: ReturnType<typeof joint>, focalPx = farPx) =>
    footHeadingDeg(heel, toe, 'left', all(...heel.xPx), shankPx, focalPx);

  it('infers the direction from how far the big toe is to the side of the heel', () => {
    expect(left(joint(100), joint(155))).toBeCloseTo(30 + toeDeg, 6);
    expect(left(joint(100), joint(45))).toBeCloseTo(-30 + toeDeg, 6);
    expect(left(joint(100), joint(100))).toBeCloseTo(toeDeg, 6);
  });

  it('takes the usual offset of the samples that count', () => {
    const [heel, toe] = [joint(0, 0, 0, 0), joint(20, 55, 70, -500)];
    const when = Uint8Array.of(1, 1, 1, 0);
    expect(footHeadingDeg(heel, toe, 'left', when, shankPx, farPx)).toBeCloseTo(30 + toeDeg, 6);
  });

  it('subtracts what a foot off the middle of the picture shows of its side', () => {
    // A foot that points straight along the camera, 1 m to its right and 2 m away: seen at atan(1 / 2) = 26.57 degrees.
    const focalPx = 1000;
    const heelPx = (focalPx * 1) / 2.1;
    const toePx = (focalPx * 1) / 1.9;
    const shank = (toePx - heelPx) / 0.5 / Math.sin(Math.atan(0.5));
    const deg = footHeadingDeg(joint(heelPx), joint(toePx), 'left', all(0), shank, focalPx)!;
    // The middle of heel and toe is 0.14 degrees from the middle of the foot.
    expect(Math.abs(deg - toeDeg)).toBeLessThan(0.2);
  });

  it('is 90 degrees from the axis at most, for a foot that looks longer than it is', () => {
    expect(left(joint(0), joint(400))).toBeCloseTo(90 + toeDeg, 6);
  });

  it('is null where the foot is never seen', () => {
    expect(footHeadingDeg(joint(1), joint(2), 'left', Uint8Array.of(0), shankPx, farPx)).toBeNull();
  });

  it('gives the mirrored foot of the other side the mirrored direction', () => {
    const px = fc.double({ min: -300, max: 300, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...sides), px, px, (side, heelPx, toePx) => {
        const seen = footHeadingDeg(joint(heelPx), joint(toePx), side, all(0), shankPx, 1000)!;
        const mirrored = footHeadingDeg(
          joint(-heelPx),
          joint(-toePx),
          otherSide(side),
          all(0),
          shankPx,
          1000,
        )!;
        expect(mirrored).toBeCloseTo(-seen, 9);
      }),
    );
  });
});
