import { describe, expect, it } from 'vitest';
import { effortWords, painWords } from '#words/painWords';

describe('painWords(score)', () => {
  it('grows with the score', () => {
    expect([0, 1, 3, 4, 6, 7, 9, 10].map(painWords)).toEqual([
      'no pain',
      'a little pain',
      'a little pain',
      'some pain',
      'some pain',
      'strong pain',
      'strong pain',
      'the worst pain you can think of',
    ]);
  });
});

describe('effortWords(score)', () => {
  it('grows with the score, and ends where the question says', () => {
    expect([0, 1, 3, 4, 6, 7, 9, 10].map(effortWords)).toEqual([
      'no effort at all',
      'light',
      'light',
      'medium',
      'medium',
      'hard',
      'hard',
      'as hard as I can',
    ]);
  });
});
