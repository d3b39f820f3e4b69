import { describe, expect, it } from 'vitest';
import { longestGoodRun } from '#core/chance/longestGoodRun';

describe('longestGoodRun(chancesInLine)', () => {
  it('is 2 in the built-in example: the third ends it, and .95 .63 are .79 on average', () => {
    expect(longestGoodRun([0.98, 0.93, 0.08, 0.95, 0.63, 0])).toBe(2);
  });

  it('takes in a doubtful one among sure ones', () => {
    // 4.5 of 5 are .9; with the sixth, 4.7 of 6 are .783.
    expect(longestGoodRun([1, 1, 0.5, 1, 1])).toBe(5);
    expect(longestGoodRun([1, 1, 0.5, 1, 1, 0.2])).toBe(5);
  });

  it('ends before one that was probably beyond a limit, whatever the average', () => {
    expect(longestGoodRun([1, 1, 1, 1, 0.2])).toBe(5);
    expect(longestGoodRun([1, 1, 1, 1, 0.19])).toBe(4);
  });

  it('finds a run that begins anywhere', () => {
    expect(longestGoodRun([0.5, 0.5, 0.92, 0.92, 0.92])).toBe(4); // .5 .92 .92 .92: .815; all five: .752
    expect(longestGoodRun([0.3, 0.3, 0.9, 0.9, 0.1, 0.9])).toBe(2);
  });

  it('ends at one that was not measured', () => {
    expect(longestGoodRun([1, 1, null, 1, 1, 1])).toBe(3);
  });

  it('is 0 where none is likely enough', () => {
    expect(longestGoodRun([0.79, 0.79])).toBe(0);
    expect(longestGoodRun([])).toBe(0);
  });
});
