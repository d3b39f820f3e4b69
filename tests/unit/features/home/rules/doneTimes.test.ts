import { describe, expect, it } from 'vitest';
import { doneTimes } from '#features/home/rules/doneTimes';
import { smallSession } from '../../../../support/smallSession';

const session = smallSession();
const planId = session.planId!;
const nothing = { ...session, sets: [] };

describe('doneTimes(sessions, planId)', () => {
  it('takes sessions of the plan in which a set was done, broken off or not', () => {
    const other = { ...session, planId: 'another' };
    const brokenOff = { ...session, startedAt: '2026-04-04T06:07:08.000Z', endedAt: null };
    expect(doneTimes([session, other, brokenOff], planId)).toEqual([session.startedAt, brokenOff.startedAt]);
  });

  it('takes a session that the rule on pain stopped, even before its first set, and no other without one', () => {
    const pain = { ...nothing, endedBecause: { reason: 'pain' as const, fell: null } };
    const sign = { ...nothing, endedBecause: { reason: 'sign' as const, fell: null } };
    expect(doneTimes([pain], planId)).toEqual([session.startedAt]);
    expect(doneTimes([sign, nothing], planId)).toEqual([]);
  });
});
