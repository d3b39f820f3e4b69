import { describe, expect, it } from 'vitest';
import { focalLengthPx } from '#core/view/focalLengthPx';

/** Angle that the long side spans, degrees. */
const longSideDeg = (widthPx: number, heightPx: number) =>
  (2 * Math.atan(Math.max(widthPx, heightPx) / 2 / focalLengthPx(widthPx, heightPx)) * 180) / Math.PI;

describe('focalLengthPx(widthPx, heightPx)', () => {
  it.each([
    // 2 atan(1 / (2 x 0.9)) = 58.1 and 2 atan(1 / (2 x 0.7)) = 71.1 degrees.
    ['an upright picture', 720, 1280, 58.1],
    ['a wide picture', 1280, 720, 71.1],
    ['a square picture', 600, 600, 58.1],
  ])('gives the long side of %s the usual field of view of such cameras', (_, widthPx, heightPx, deg) => {
    expect(longSideDeg(widthPx, heightPx)).toBeCloseTo(deg, 1);
  });

  it('grows with the picture', () => {
    expect(focalLengthPx(2160, 3840)).toBeCloseTo(3 * focalLengthPx(720, 1280), 9);
  });
});
