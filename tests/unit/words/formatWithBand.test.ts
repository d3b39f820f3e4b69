import { describe, expect, it } from 'vitest';
import { longAngle, shortAngle, shortCm } from '#words/formatWithBand';

describe('shortAngle(extreme), longAngle(extreme)', () => {
  it('say number, direction and band', () => {
    expect(shortAngle({ value: 14.2, band: 2.4 })).toBe('14° in ±2');
    expect(shortAngle({ value: -3.4, band: 5.6 })).toBe('3° out ±6');
    expect(longAngle({ value: 14.2, band: 2.4 })).toBe('14 degrees inward, give or take 2');
  });

  it('leave the direction out at 0 and never show a band as nothing', () => {
    expect(longAngle({ value: -1.2, band: 5 })).toBe('1 degree outward, give or take 5');
    expect(shortAngle({ value: 0.3, band: 0.2 })).toBe('0° ±1');
    expect(longAngle({ value: 0, band: 5 })).toBe('0 degrees, give or take 5');
  });
});

describe('shortCm(extreme, bodyHeightCm)', () => {
  it('turns a share of leg length into centimetres by the segment table of Drillis & Contini', () => {
    // Leg of a person of 172 cm: 0.491 x 172 = 84.5 cm; 6 % of it are 5.07 cm, 4.1 % are 3.46 cm.
    expect(shortCm({ value: 0.06, band: 0.02 }, 172)).toBe('5 cm');
    expect(shortCm({ value: -0.041, band: 0.02 }, 172)).toBe('3 cm');
    expect(shortCm({ value: 0.002, band: 0.02 }, 172)).toBe('0 cm');
  });

  it('says nothing where the body height is not known', () => {
    expect(shortCm({ value: 0.06, band: 0.02 }, undefined)).toBeNull();
  });
});
