import { describe, expect, it } from 'vitest';
import { countInLine } from '#core/chance/countInLine';
import { notedConditions } from '#documents/plan/notedConditions';
import type { PlanDocument } from '#documents/plan/planDocument';
import type { StagedSession } from '#documents/programme/stageCourseOf';
import { notAsked } from '#documents/session/notAsked';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { itemsNow, stepAtHome } from '#features/home/rules/stepAtHome';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';

const item = smallItem({ task: 'single-leg-sit-to-stand', stage: 'seat-46', sets: 1, repetitions: 8 });
const plan = smallPlan({ items: [smallHold(), item], painLimit: 3, usualPain: 1, autoStep: 'within-plan' });
const peaksDeg = [2, 3, 4, 4, 5, 3, 6, 4, 5, 4];
const inLine = countInLine(
  peaksDeg.map((most) => ({ most })),
  { least: -10, most: 10 },
  { sharedSd: 1, ownSds: peaksDeg.map(() => 1) },
);
const idOf = (day: number) => `${String(day).padStart(8, '0')}-93ff-4a8e-8f8d-5a6c1b2e7d10`;

interface Said {
  painDuring?: number;
  effort?: number | null;
  repetitions?: number;
  measured?: boolean;
  change?: Partial<StagedSession>;
}

/** A session on that day of April, in which all went well but for what is given. */
function session(
  day: number,
  { painDuring = 2, effort = 6, repetitions = 8, measured = true, change = {} }: Said = {},
) {
  const line = {
    ...smallSession().sets[0]!,
    ...{ item: 1, task: item.task, painDuring, prescribedRepetitions: repetitions, cutShort: null },
    conditions: notedConditions(item, plan),
  };
  const staged: StagedSession = {
    ...notAsked,
    ...{ id: idOf(day), startedAt: `2026-04-${String(day).padStart(2, '0')}T08:00:00` },
    ...{ painBefore: 1, painAfter: 1, effort, settlement: null },
    sets: [{ line, asked: null, measured: measured ? { found: 10, inLine, peaksDeg } : null }],
    ...change,
  };
  return staged;
}

/** These sessions, each of which was asked about at the next one, and the one that begins now. */
function answered(sessions: StagedSession[], last: number | null = 1): StagedSession[] {
  const begun = session(9, { change: { sets: [] } });
  return [...sessions, begun].map((one, index, all) => {
    const before = all[index - 1];
    if (before === undefined || (one === begun && last === null)) return one;
    const worst = one.id === begun.id ? last : 1;
    return { ...one, afterLast: { visitId: before.id, worst, swelling: 'same' as const } };
  });
}

const step = (sessions: StagedSession[], change: Partial<PlanDocument> = {}, day = 9) => {
  const changed = { ...plan, ...change };
  return stepAtHome(changed, changed.items, sessions, new Date(2026, 3, day, 8));
};
const more = (to: number) => [{ kind: 'more', from: 8, to }];
const three = [session(1), session(3), session(7)];

describe('stepAtHome(plan, now, sessions, today)', () => {
  it.each<[string, StagedSession[], Partial<PlanDocument>, object[]]>([
    ['all went well', answered(three), {}, [{ kind: 'more', from: 8, to: 10 }]],
    ['the plan only lets it propose', answered(three), { autoStep: 'propose' }, []],
    ['the plan lets it do nothing', answered(three), { autoStep: 'never' }, []],
    ['nothing was done yet', answered([]), {}, []],
    ['two sessions', answered(three.slice(1)), {}, []],
    ['the day after was not answered', answered(three, null), {}, []],
    ['much effort', answered([...three.slice(0, 2), session(7, { effort: 9 })]), {}, []],
    ['effort was not answered', answered([...three.slice(0, 2), session(7, { effort: null })]), {}, []],
    ['not measured', answered([1, 3, 7].map((day) => session(day, { measured: false }))), {}, []],
    [
      'too much pain once',
      answered([...three.slice(0, 2), session(7, { painDuring: 4 })]),
      {},
      [{ kind: 'repeat', repetitions: 8, restToday: false }],
    ],
    [
      '3 more on the day after',
      answered(three, 4),
      {},
      [{ kind: 'repeat', repetitions: 8, restToday: false }],
    ],
    [
      'too much pain twice: a step down is the therapist’s',
      answered([session(1), session(3, { painDuring: 4 }), session(7, { painDuring: 4 })]),
      {},
      [],
    ],
    [
      'strong pain: a hold is the therapist’s',
      answered([...three.slice(0, 2), session(7, { painDuring: 8 })]),
      {},
      [],
    ],
    [
      'as many as the stage asks for: a step up is the therapist’s',
      answered([1, 3, 7].map((day) => session(day, { repetitions: 20 }))),
      { items: [smallHold(), { ...item, repetitions: 20 }] },
      [],
    ],
    [
      'two sessions are enough by the plan',
      answered(three.slice(1)),
      { thresholds: { sessions: 2 } },
      more(10),
    ],
    ['three sessions are too few by the plan', answered(three), { thresholds: { sessions: 4 } }, []],
    ['4 more at once by the plan', answered(three), { thresholds: { addedRepetitions: 4 } }, more(12)],
    [
      'effort that the plan does not call much',
      answered([...three.slice(0, 2), session(7, { effort: 9 })]),
      { thresholds: { mostEffort: 9 } },
      more(10),
    ],
    [
      'pain of the day after that the plan calls too much',
      answered(three, 3),
      { thresholds: { nextDayRise: 2 } },
      [{ kind: 'repeat', repetitions: 8, restToday: false }],
    ],
    [
      'never beyond what the plan allows',
      answered(three),
      { items: [smallHold(), { ...item, upTo: { min: 9, max: 9 } }] },
      [{ kind: 'more', from: 8, to: 9 }],
    ],
    [
      'the plan is at its end already',
      answered(three),
      { items: [smallHold(), { ...item, upTo: { min: 9, max: 9 }, repetitions: 9 }] },
      [],
    ],
  ])('%s', (_case, sessions, change, steps) => {
    const found = step(sessions, change);
    expect(found.steps).toEqual(steps.map((one) => expect.objectContaining(one) as object));
    const [first] = steps as { to?: number }[];
    const planned = { ...plan, ...change }.items[1]!;
    expect(found.items).toEqual([
      smallHold(),
      first?.to === undefined ? planned : { ...planned, repetitions: first.to },
    ]);
  });

  it('asks for a day of rest where there was none since', () => {
    const poor = answered([session(3), session(8, { painDuring: 4 })]);
    expect(step(poor).steps).toMatchObject([{ kind: 'repeat', restToday: true }]);
    expect(step(poor, {}, 10).steps).toMatchObject([{ kind: 'repeat', restToday: false }]);
  });
});

describe('itemsNow(plan, sessions)', () => {
  const kept = (prescribedRepetitions: number, change: Partial<SessionDocument> = {}): SessionDocument => ({
    ...smallSession(),
    planId: plan.id,
    sets: [{ ...smallSession().sets[0]!, item: 1, task: item.task, prescribedRepetitions }],
    ...change,
  });
  it.each<[string, SessionDocument[], Partial<PlanDocument>, number]>([
    ['nothing was done', [], {}, 8],
    ['more came to be done', [kept(12), kept(10)], {}, 12],
    ['the newest session left it out', [kept(12, { sets: [] }), kept(10)], {}, 10],
    ['a part of a set was left', [kept(3)], {}, 8],
    ['of another plan', [kept(12, { planId: null })], {}, 8],
    ['the plan lets the device change nothing', [kept(12)], { autoStep: 'propose' }, 8],
    ['more than the plan allows now', [kept(30)], {}, 25],
  ])('%s', (_case, sessions, change, repetitions) => {
    expect(itemsNow({ ...plan, ...change }, sessions)).toEqual([smallHold(), { ...item, repetitions }]);
  });
});
