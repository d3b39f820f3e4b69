import { describe, expect, it } from 'vitest';
import { otherSide, sides } from '#core/protocol/side';

describe('otherSide(side)', () => {
  it('is the opposite side, and twice the same', () => {
    expect(sides.map(otherSide)).toEqual(['right', 'left']);
    for (const side of sides) expect(otherSide(otherSide(side))).toBe(side);
  });
});
