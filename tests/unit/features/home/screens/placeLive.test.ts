import { describe, expect, it } from 'vitest';
import { placeLive } from '#features/home/screens/placeLive';

describe('placeLive(picture, stage)', () => {
  it('fills the stage where only a little of the sides is cut off for it', () => {
    // 1280 x 720 on 560 x 360: at half its size it is 640 px wide, 80 px over, 40 on each side.
    expect(placeLive({ widthPx: 1280, heightPx: 720 }, { width: 560, height: 360 })).toEqual({
      left: -40,
      top: 0,
      width: 640,
      height: 360,
    });
  });

  it('shows the whole picture where filling would cut off more', () => {
    // 1280 x 720 on 390 x 640: 390 px wide, 219.375 px high.
    expect(placeLive({ widthPx: 1280, heightPx: 720 }, { width: 390, height: 640 })).toEqual({
      left: 0,
      top: 210.5,
      width: 390,
      height: 219,
    });
  });

  it('never cuts off head or shoes', () => {
    const { top, height } = placeLive({ widthPx: 540, heightPx: 960 }, { width: 390, height: 640 });
    expect(top).toBe(0);
    expect(height).toBeLessThanOrEqual(640);
  });

  it('takes no room before the stage has any', () => {
    expect(placeLive({ widthPx: 1280, heightPx: 720 }, { width: 0, height: 0 })).toEqual({
      left: 0,
      top: 0,
      width: 0,
      height: 0,
    });
  });
});
