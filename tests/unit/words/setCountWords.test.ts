import { describe, expect, it } from 'vitest';
import { countInLine } from '#core/chance/countInLine';
import { countRange, countWords } from '#words/setCountWords';

const count = (peaks: readonly number[], sd: number) =>
  countInLine(
    peaks.map((most) => ({ most })),
    { most: 10 },
    { sharedSd: sd, ownSds: peaks.map(() => sd / 2) },
  );

describe('countWords(count)', () => {
  it('gives the range and the most likely number', () => {
    const open = count([3.47, 5.65, 14.06, 4.52, 8.92, 17.3], 2.4);
    expect(countRange(open)).toBe('2 to 5 of 6');
    expect(countWords(open)).toBe('2 to 5 of 6 (most likely 4)');
  });

  it('gives one number where there is no doubt', () => {
    expect(countWords(count([1, 2, 30], 1))).toBe('2 of 3');
  });
});
