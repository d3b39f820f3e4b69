import { describe, expect, it } from 'vitest';
import { scaledSize } from '#device/frames/scaledSize';

describe('scaledSize(widthPx, heightPx, maxHeightPx)', () => {
  it('brings a picture down to the height and keeps its shape', () => {
    expect(scaledSize(720, 1280, 640)).toEqual({ width: 360, height: 640 });
    expect(scaledSize(3840, 2160, 640)).toEqual({ width: 1138, height: 640 }); // 3840 * 640 / 2160 = 1137.8
  });

  it('leaves a small picture as it is', () => {
    expect(scaledSize(320, 240, 640)).toEqual({ width: 320, height: 240 });
  });

  it('never makes a side vanish', () => {
    expect(scaledSize(2, 5000, 640)).toEqual({ width: 1, height: 640 });
  });
});
