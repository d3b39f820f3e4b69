import { describe, expect, it } from 'vitest';
import { formatDeviation } from '../../../src/words/formatDeviation';

describe('formatDeviation(share)', () => {
  it.each([
    [0.043, '4 % inward'],
    [-0.118, '12 % outward'],
    [0.0049, '0 %'],
    [-0.004, '0 %'],
  ])('writes %d as %s', (share, words) => {
    expect(formatDeviation(share)).toBe(words);
  });
});
