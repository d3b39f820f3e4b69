import { describe, expect, it } from 'vitest';
import { fitWords, wordsWidthEm } from '#features/home/screens/fitWords';

describe('wordsWidthEm(text)', () => {
  it('adds up the widths of the letters', () => {
    // S 0.64, t 0.38, e 0.58, p 0.6: rounded up from the font's own 0.619, 0.379, 0.566 and 0.596.
    expect(wordsWidthEm('Step')).toBeCloseTo(2.2, 10);
  });

  it('is 0 without letters', () => {
    expect(wordsWidthEm('')).toBe(0);
  });
});

describe('fitWords(text, aspect)', () => {
  it('sets one word a line where the place is upright', () => {
    expect(fitWords('Step back', 0.8).lines).toEqual(['Step', 'back']);
  });

  it('keeps the words in one line where the place is wide', () => {
    expect(fitWords('Step back', 6).lines).toEqual(['Step back']);
  });

  it('joins short words rather than take a line for each', () => {
    expect(fitWords('Level the camera', 2).lines).toEqual(['Level the', 'camera']);
  });

  it('gives the width of the widest line', () => {
    const { lines, widestEm } = fitWords('Come closer', 0.8);
    expect(widestEm).toBe(Math.max(...lines.map(wordsWidthEm)));
  });
});
