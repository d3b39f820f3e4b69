import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { adherence, outcomes, type Occasion, type Outcome, type PlanPeriod } from '#core/adherence/adherence';

const plan = (given: Partial<PlanPeriod> = {}): PlanPeriod => ({
  perWeek: 3,
  startDay: 0,
  today: 21,
  pauses: [],
  ...given,
});
const on = (days: readonly number[], outcome: Outcome = 'done'): Occasion[] =>
  days.map((day) => ({ day, outcome }));
const weeksOf = (...given: Parameters<typeof adherence>) =>
  adherence(...given)
    .weeks.filter(({ due }) => due > 0)
    .map(({ done, due }) => `${done}/${due}`);

describe('adherence(occasions, plan)', () => {
  it('counts by week from the start of the plan', () => {
    // Three whole weeks of 3: 2, 0 and 3 of them.
    const found = adherence(on([1, 3, 14, 16, 18]), plan());
    expect(found.weeks.slice(0, 3)).toEqual([
      { week: 0, done: 2, due: 3 },
      { week: 1, done: 0, due: 3 },
      { week: 2, done: 3, due: 3 },
    ]);
    expect([found.done, found.due]).toEqual([5, 9]);
    expect(found.interval!.share).toBeCloseTo(5 / 9, 12);
  });

  it('counts stopping by the rule, a hold and doing it unfilmed as done, and giving up not', () => {
    const one = (outcome: Outcome) => adherence(on([6], outcome), plan({ today: 7 })).done;
    expect(outcomes.map((outcome) => [outcome, one(outcome)])).toEqual([
      ['done', 1],
      ['unfilmed', 1],
      ['stopped', 1],
      ['held', 1],
      ['given-up', 0],
    ]);
  });

  it('has the part of the running week due that is over, rounded down', () => {
    // Days 7, 8, 9: 3 x 3 / 7 = 1.3; days 7 and 8: .86.
    expect(weeksOf([], plan({ today: 10 }))).toEqual(['0/3', '0/1']);
    expect(weeksOf([], plan({ today: 9 }))).toEqual(['0/3']);
  });

  it('has nothing due in a pause', () => {
    // Week 0 has 4 days left: 1.7; week 1 none; week 2 all.
    expect(weeksOf([], plan({ pauses: [{ from: 4, to: 13 }] }))).toEqual(['0/1', '0/3']);
    expect(weeksOf([], plan({ pauses: [{ from: 7, to: null }] }))).toEqual(['0/3']);
  });

  it('has nothing due after a session to hold, until there is one again', () => {
    const held = [...on([0, 2]), ...on([4], 'held')];
    // Days 0 to 4 are due: 5 x 3 / 7 = 2.1.
    expect(weeksOf(held, plan())).toEqual(['2/2']);
    // From day 14 on again: 7 days.
    expect(weeksOf([...held, ...on([14])], plan())).toEqual(['2/2', '1/3']);
  });

  it('is silent after a week without anything, pauses left out', () => {
    const silence = (occasions: Occasion[], given: Partial<PlanPeriod>) => {
      const { silentDays, isSilent } = adherence(occasions, plan(given));
      return [silentDays, isSilent];
    };
    expect(silence(on([2]), { today: 12 })).toEqual([9, true]);
    expect(silence(on([2]), { today: 9 })).toEqual([6, false]);
    expect(silence(on([2], 'given-up'), { today: 10 })).toEqual([7, true]);
    expect(silence([], { today: 8 })).toEqual([8, true]);
    expect(silence(on([2]), { today: 12, pauses: [{ from: 3, to: 7 }] })).toEqual([4, false]);
    expect(silence(on([2], 'held'), { today: 40 })).toEqual([0, false]);
    expect(adherence(on([2]), plan({ today: 6 }), 3).isSilent).toBe(true);
  });

  it('has nothing before the plan begins and on its first day', () => {
    for (const today of [-3, 0])
      expect(adherence([], plan({ today }))).toMatchObject({
        done: 0,
        due: 0,
        interval: null,
        silentDays: 0,
      });
  });

  it('leaves out what came before the plan', () => {
    expect(adherence(on([-2, 40]), plan()).done).toBe(0);
  });

  it('never has more done than due, nor less for one more session', () => {
    const anyOccasions = fc.array(
      fc.record({
        day: fc.integer({ min: 0, max: 20 }),
        outcome: fc.constantFrom<Outcome>('done', 'given-up'),
      }),
    );
    fc.assert(
      fc.property(
        anyOccasions,
        fc.integer({ min: 0, max: 20 }),
        fc.integer({ min: 1, max: 9 }),
        (all, day, perWeek) => {
          const [less, more] = [all, [...all, ...on([day])]].map((each) =>
            adherence(each, plan({ perWeek })),
          );
          expect(less!.done).toBeLessThanOrEqual(less!.due);
          expect(more!.done).toBeGreaterThanOrEqual(less!.done);
          expect(more!.due).toBe(less!.due);
        },
      ),
    );
  });

  it('refuses less than one occasion a week', () => {
    for (const perWeek of [0, NaN, Infinity])
      expect(() => adherence([], plan({ perWeek }))).toThrow(RangeError);
  });
});
