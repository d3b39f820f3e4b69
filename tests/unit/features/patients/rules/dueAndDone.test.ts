import { describe, expect, it } from 'vitest';
import { dueAndDone, dueWords } from '#features/patients/rules/dueAndDone';
import { listedSession } from '../../../../support/listedSession';

const plan = { id: 'p', createdAt: '2026-04-01T08:00:00.000Z', perWeek: 3 };
const done = (day: number, change = {}) =>
  listedSession({
    startedAt: `2026-04-${String(day).padStart(2, '0')}T08:00:00.000Z`,
    plan: { id: 'p', madeAt: null },
    ...change,
  });
const at = (day: string) => Date.parse(`2026-04-${day}T09:00:00.000Z`);

describe('dueAndDone(plan, sessions, now)', () => {
  it('counts sessions of this plan in which something was done', () => {
    const sessions = [done(2), done(5, { isUnfilmed: true }), done(6, { sets: [] }), done(7, { plan: null })];
    // 16 whole days at 3 a week: 6.86, so 6 are due.
    const found = dueAndDone(plan, sessions, at('17'));
    expect(found).toEqual({ done: 2, unfilmed: 1, due: 6, silentDays: 12 });
    expect(dueWords(found)).toBe(
      '2 sessions done (1 without filming), 6 due so far; the last one 12 days ago',
    );
  });

  it('has nothing due where the plan leaves it open, or is of today', () => {
    expect(dueWords(dueAndDone({ ...plan, perWeek: null }, [done(2)], at('02')))).toBe(
      '1 session done; the last one today',
    );
    expect(dueWords(dueAndDone(plan, [], at('01')))).toBe('0 sessions done, 0 due so far');
  });
});
