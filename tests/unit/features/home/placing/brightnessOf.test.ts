import { describe, expect, it } from 'vitest';
import { brightnessOf } from '#features/home/placing/brightnessOf';

const pixels = (...colours: [number, number, number][]) =>
  Uint8ClampedArray.from(colours.flatMap((colour) => [...colour, 255]));

describe('brightnessOf(rgba)', () => {
  it('is 0 for black, 1 for white, without contrast', () => {
    expect(brightnessOf(pixels([0, 0, 0], [0, 0, 0]))).toEqual({ mean: 0, contrast: 0 });
    const { mean, contrast } = brightnessOf(pixels([255, 255, 255], [255, 255, 255]));
    expect(mean).toBeCloseTo(1, 12);
    expect(contrast).toBeCloseTo(0, 6);
  });

  it('weighs green most and blue least, by hand', () => {
    // 51 of 255 is 0.2: 0.2 * 0.7152 + 0.4 * 0.2126 + 0.6 * 0.0722 = 0.2714.
    expect(brightnessOf(pixels([102, 51, 153])).mean).toBeCloseTo(0.2714, 4);
  });

  it('has a contrast of one half where half is black and half is white', () => {
    expect(brightnessOf(pixels([0, 0, 0], [255, 255, 255])).contrast).toBeCloseTo(0.5, 12);
  });

  it('samples all of a large picture', () => {
    const large = new Uint8ClampedArray(4 * 640 * 360).map((_, i) => (i < 2 * 640 * 360 ? 0 : 255));
    expect(brightnessOf(large).mean).toBeCloseTo(0.5, 2);
  });

  it('throws where there is no pixel', () => {
    expect(() => brightnessOf([])).toThrow(RangeError);
  });
});
