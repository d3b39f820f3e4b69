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
  it('counts sessions of this plan in which something was done, against what was due in each week', () => {
    const sessions = [done(2), done(5, { isUnfilmed: true }), done(6, { sets: [] }), done(7, { plan: null })];
    // Two whole weeks at 3 a week, and 2 days of the third: 6 due, of which the first week has 2.
    const found = dueAndDone(plan, sessions, [], at('17'));
    expect(found).toMatchObject({ done: 2, unfilmed: 1, byWeek: { done: 2, due: 6 }, silentDays: 12 });
    expect(dueWords(found)).toBe(
      '2 sessions done (1 without filming), 2 of the 6 due in their week; the last one 12 days ago',
    );
  });

  it('counts a session beyond what a week asks for as done, and not for another week', () => {
    const found = dueAndDone(
      plan,
      [1, 2, 3, 4, 5].map((day) => done(day)),
      [],
      at('15'),
    );
    expect(dueWords(found)).toBe('5 sessions done, 3 of the 6 due in their week; the last one 10 days ago');
  });

  it('counts stopping because of pain as done, and giving up as not', () => {
    const ended = (reason: string) => ({ endedBecause: { reason, fell: null } });
    expect(dueAndDone(plan, [done(2, ended('pain')), done(3, ended('other'))], [], at('10')).done).toBe(1);
  });

  it('has nothing due where the plan leaves it open, or is of today', () => {
    expect(dueWords(dueAndDone({ ...plan, perWeek: null }, [done(2)], [], at('02')))).toBe(
      '1 session done; the last one today',
    );
    expect(dueWords(dueAndDone(plan, [], [], at('01')))).toBe('0 sessions done, none due yet');
  });

  it('has nothing due in a pause, and as before once it is taken out', () => {
    const pause = (change = {}) => ({
      ...{ id: 'q', at: '2026-04-08T08:00:00.000Z', by: 'AB', withdrawn: null, changed: null },
      ...{ from: '2026-04-08', to: '2026-04-14', ...change },
    });
    const due = (change = {}) => dueAndDone(plan, [], [pause(change)], at('15')).byWeek?.due;
    expect([due(), due({ to: null }), due({ to: '2026-04-09' })]).toEqual([3, 3, 5]);
    expect(due({ withdrawn: { at: '2026-04-09T08:00:00.000Z', by: 'AB' } })).toBe(6);
  });
});
