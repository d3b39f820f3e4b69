import { describe, expect, it } from 'vitest';
import { formatAngle } from '#words/formatAngle';

describe('formatAngle(deg)', () => {
  it.each([
    [13.6, '14° inward'],
    [-2.5, '3° outward'],
    [0.5, '1° inward'],
    [0.49, '0°'],
    [-0.3, '0°'],
    [-0, '0°'],
  ])('writes %d as %s', (deg, words) => {
    expect(formatAngle(deg)).toBe(words);
  });
});
