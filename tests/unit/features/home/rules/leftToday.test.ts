import { describe, expect, it } from 'vitest';
import type { SessionDocument, SessionSet } from '#documents/session/sessionDocument';
import { unwanted } from '#features/home/guide/unwanted';
import { leftToday } from '#features/home/rules/leftToday';
import { smallHold, smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';

/** Two sets of five with the right leg, then one of holds with the left. */
const plan = smallPlan({ items: [smallItem(), smallHold()] });
const now = new Date('2026-05-06T18:00:00');
const at = (hours: number) => new Date(2026, 4, 6, hours).toISOString();
const [line] = smallSession().sets;
const set = (change: Partial<SessionSet>): SessionSet => ({ ...line!, cutShort: null, ...change });
const broken = (sets: SessionSet[], change: Partial<SessionDocument> = {}): SessionDocument => ({
  ...smallSession(),
  planId: plan.id,
  startedAt: at(9),
  endedAt: null,
  painLimit: 4,
  sets,
  ...change,
});
const left = (sessions: SessionDocument[], isInterrupted = false, counted: number | null = null) =>
  leftToday(
    sessions,
    plan,
    () => isInterrupted,
    () => counted,
    now,
  );
const told = (found: ReturnType<typeof left>) =>
  found?.steps.map(({ item, side, number }) =>
    item.kind === 'hold' ? `hold ${side}` : `${item.repetitions} ${side} ${number}`,
  );

describe('leftToday(sessions, plan, isInterrupted, counted, now)', () => {
  it('is what was not done of a session of today without an end', () => {
    const found = left([broken([set({})])]);
    expect(found).toMatchObject({ done: 1, of: 3 });
    expect(told(found)).toEqual(['5 right 2', 'hold left']);
  });

  it('asks of a set that was interrupted for the repetitions that are missing, of a hold for all', () => {
    const parts = [set({ cutShort: unwanted.cameraStopped }), set({ cutShort: unwanted.interrupted })];
    expect(told(left([broken(parts)], false, 2))).toEqual(['1 right 1', '5 right 2', 'hold left']);
    expect(told(left([broken(parts)]))).toEqual(['5 right 1', '5 right 2', 'hold left']);
    const hold = { item: 1, task: 'quad-press-hold', side: 'left', sessionId: null } as const;
    const both = [set({}), set({ number: 2 }), set({ ...hold, cutShort: unwanted.interrupted })];
    expect(told(left([broken(both)]))).toEqual(['hold left']);
  });

  it('leaves out what somebody ended, and is nothing where all is done', () => {
    expect(told(left([broken([set({ cutShort: 'ended early' })])]))).toEqual(['5 right 2', 'hold left']);
    const hold = set({ item: 1, task: 'quad-press-hold', side: 'left' });
    expect(left([broken([set({}), set({ number: 2 }), hold])])).toBeNull();
  });

  it('is there where the first set was interrupted and is not kept yet, not where nothing was begun', () => {
    expect(told(left([broken([])], true))).toEqual(['5 right 1', '5 right 2', 'hold left']);
    expect(left([broken([])])).toBeNull();
  });

  it('goes on through several that were broken off, but no farther than one that was ended', () => {
    const second = broken([set({ number: 2 })], { startedAt: at(11) });
    expect(told(left([second, broken([set({})])]))).toEqual(['hold left']);
    const ended = broken([set({})], { endedAt: at(10) });
    expect(told(left([second, ended]))).toEqual(['5 right 1', 'hold left']);
    expect(left([ended, broken([set({})], { startedAt: at(8) })])).toBeNull();
  });

  it('is for the same day, and of the same plan', () => {
    const dayBefore = new Date(2026, 4, 5, 23).toISOString();
    expect(left([broken([set({})], { startedAt: dayBefore })])).toBeNull();
    expect(left([broken([set({})], { planId: null })])).toBeNull();
  });

  it('is not offered after a stop, or where something was said that has to be seen first', () => {
    expect(left([broken([set({})], { endedBecause: { reason: 'other', fell: false } })])).toBeNull();
    expect(left([broken([set({ painDuring: 6 })])])).toBeNull();
    expect(left([broken([set({ painDuring: 4 })])])).not.toBeNull();
  });
});
