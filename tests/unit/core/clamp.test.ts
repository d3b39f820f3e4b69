import { describe, expect, it } from 'vitest';
import { clamp } from '#core/clamp';

describe('clamp(value, least, most)', () => {
  it('leaves a value between the two, and at either', () => {
    for (const value of [-3, 1.5, 7]) expect(clamp(value, -3, 7)).toBe(value);
  });

  it('brings a value outside to the nearer of the two', () => {
    expect(clamp(-3.1, -3, 7)).toBe(-3);
    expect(clamp(Infinity, -3, 7)).toBe(7);
  });

  it('gives the least where the two cross', () => {
    for (const value of [1, 3, 9]) expect(clamp(value, 5, 2)).toBe(5);
  });

  it('does not hide a NaN', () => {
    expect(clamp(NaN, 0, 1)).toBeNaN();
  });
});
