import { describe, expect, it } from 'vitest';
import { chanceWords } from '#words/chanceWords';

describe('chanceWords(chance)', () => {
  it.each([
    [0, 'below 1 %'],
    [0.0099, 'below 1 %'],
    [0.01, '1 %'],
    [0.834, '83 %'],
    [0.99, '99 %'],
    [1, 'above 99 %'],
  ])('says of %f: %s', (chance, words) => {
    expect(chanceWords(chance)).toBe(words);
  });
});
