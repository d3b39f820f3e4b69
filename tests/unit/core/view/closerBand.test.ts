import { describe, expect, it } from 'vitest';
import { closerBand } from '#core/view/closerBand';
import type { ViewCue } from '#core/view/viewCue';

const told = (name: ViewCue['name'], yawDeg = 0) => ({
  yawDeg,
  cues: [
    { name: 'facing-camera' as const, yawDeg: 0, sdDeg: 14 },
    { name, yawDeg, sdDeg: 2 },
  ],
});
/** Shared 3, own 4. */
const propagated = { whole: 5, own: 4 };

describe('closerBand(propagated, yaw)', () => {
  it('takes all of the own part and three tenths of the shared one, times the conformal share', () => {
    // 0.91 x hypot(4, 0.3 x 3) = 0.91 x 4.1 = 3.731, of which four fifths at most are own.
    const { whole, own } = closerBand(propagated, told('thighs'));
    expect(whole).toBeCloseTo(3.731, 3);
    expect(own).toBeCloseTo(0.8 * 3.731, 3);
  });

  it('is wider where only feet tell the yaw, and leaves the own part as it is', () => {
    // 1.74 / 0.91 of it.
    const { whole, own } = closerBand(propagated, told('feet'));
    expect(whole).toBeCloseTo((3.731 * 1.74) / 0.91, 12);
    expect(own).toBe(4);
    for (const name of ['stance-foot', 'facing-camera'] as const)
      expect(closerBand(propagated, told(name)).whole).toBe(whole);
    for (const name of ['bends', 'free-shank'] as const)
      expect(closerBand(propagated, told(name)).whole).toBeLessThan(whole);
  });

  it('widens as the body turns, either way alike', () => {
    // At 30 degrees twice the sine is 1: hypot(1, 1).
    const square = closerBand(propagated, told('feet')).whole;
    expect(closerBand(propagated, told('feet', 30)).whole / square).toBeCloseTo(Math.SQRT2, 12);
    expect(closerBand(propagated, told('feet', -12))).toEqual(closerBand(propagated, told('feet', 12)));
  });

  it('has a width where nothing is own, and none where nothing is off', () => {
    expect(closerBand({ whole: 2, own: 0 }, told('thighs'))).toEqual({ whole: 0.91 * 0.3 * 2, own: 0 });
    expect(closerBand({ whole: 0, own: 0 }, told('thighs'))).toEqual({ whole: 0, own: 0 });
  });
});
