import { describe, expect, it } from 'vitest';
import { matchRepetitions } from '#tools/validation/matchRepetitions';
import { foundRepetition, trueRepetition } from './handMade';

describe('matchRepetitions(truths, found)', () => {
  // Loaded in truth: 1.5 to 4 s, and 6.5 to 9 s.
  const truths = [trueRepetition(0, 1), trueRepetition(1, 6)];
  const numbers = (found: ReturnType<typeof foundRepetition>[]) =>
    matchRepetitions(truths, found).map((match) => match.found?.number ?? null);

  it('pairs by time, not by order', () => {
    expect(numbers([foundRepetition(1, 6.6, 8.8), foundRepetition(2, 1.7, 3.9)])).toEqual([2, 1]);
  });

  it('leaves a true repetition alone where nothing lies over it', () => {
    expect(numbers([foundRepetition(1, 6.6, 8.8)])).toEqual([null, 1]);
  });

  it('does not pair spans that only touch', () => {
    expect(numbers([foundRepetition(1, 4, 6.5)])).toEqual([null, null]);
  });

  it('uses a found repetition once, where it overlaps longest', () => {
    // Over both truths: 4 - 3.5 = 0.5 s of the first and 8.9 - 6.5 = 2.4 s of the second.
    expect(numbers([foundRepetition(1, 3.5, 8.9)])).toEqual([null, 1]);
  });

  it('takes the longer of two found halves', () => {
    // 2.1 - 1.5 = 0.6 s and 4 - 2.2 = 1.8 s of the first truth.
    expect(numbers([foundRepetition(1, 1.4, 2.1), foundRepetition(2, 2.2, 4.1)])).toEqual([2, null]);
  });
});
