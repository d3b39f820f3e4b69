import { describe, expect, it } from 'vitest';
import { shortCm } from '#words/shortCm';

describe('shortCm({ value }, bodyHeightCm)', () => {
  it('turns a share of leg length into centimetres by the segment table of Drillis & Contini', () => {
    // Leg of a person of 172 cm: 0.491 x 172 = 84.5 cm; 6 % of it are 5.07 cm, 4.1 % are 3.46 cm.
    expect(shortCm({ value: 0.06 }, 172)).toBe('5 cm');
    expect(shortCm({ value: -0.041 }, 172)).toBe('3 cm');
    expect(shortCm({ value: 0.002 }, 172)).toBe('0 cm');
  });

  it('says nothing where the body height is not known', () => {
    expect(shortCm({ value: 0.06 }, undefined)).toBeNull();
  });
});
