import { describe, expect, it } from 'vitest';
import { distancePx } from '#core/geometry/point';

describe('distancePx(a, b)', () => {
  it('is the straight distance', () => {
    // 8 - 3 = 5 across, 19 - 7 = 12 down: sqrt(25 + 144) = 13.
    expect(distancePx({ x: 3, y: 7 }, { x: 8, y: 19 })).toBe(13);
  });

  it('is the same both ways, and 0 from a point to itself', () => {
    const [a, b] = [
      { x: -4, y: 11 },
      { x: 6, y: 2.5 },
    ];
    expect(distancePx(a, b)).toBe(distancePx(b, a));
    expect(distancePx(a, a)).toBe(0);
  });
});
