import { describe, expect, it } from 'vitest';
import { ordinalWord } from '#words/ordinalWord';

describe('ordinalWord(place)', () => {
  it('is a word up to twelve, then a number with its ending', () => {
    const places = [1, 3, 12, 13, 21, 22, 23, 30, 111];
    const words = ['first', 'third', 'twelfth', '13th', '21st', '22nd', '23rd', '30th', '111th'];
    expect(places.map(ordinalWord)).toEqual(words);
  });
});
