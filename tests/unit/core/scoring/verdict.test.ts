import { expect, it } from 'vitest';
import { verdictOf, verdicts, verdictSide } from '#core/scoring/verdict';

it('names a side where one is at least probable, and none where it can’t tell or was not measured', () => {
  expect(verdicts.map((verdict) => [verdict, verdictSide(verdict)])).toEqual([
    ['out', 'out'],
    ['probably-out', 'out'],
    ['cant-tell', null],
    ['probably-in', 'in'],
    ['in', 'in'],
    ['not-measured', null],
  ]);
});

it('is not measured without a chance, however sure one wants to be, and graded with one', () => {
  expect(verdictOf(null, 0.8)).toBe('not-measured');
  expect(verdictOf(null, 0.95)).toBe('not-measured');
  expect([0, 0.5, 1].map((chance) => verdictOf(chance, 0.8))).toEqual(['out', 'cant-tell', 'in']);
});
