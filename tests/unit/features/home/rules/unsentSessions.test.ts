import { describe, expect, it } from 'vitest';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { unsentSessions } from '#features/home/rules/unsentSessions';
import { smallSession } from '../../../../support/smallSession';

const session = smallSession();
const plan = { id: session.planId!, returnKeys: ['age1invented'] };
const dayMs = 24 * 3_600_000;
const nowMs = Date.parse(session.startedAt) + dayMs;
const never = () => false;
const none = () => 0;
const told = {
  planId: plan.id,
  startedAt: session.startedAt,
  isBrokenOff: false,
  isAnswer: false,
  recipients: ['age1invented'],
};

describe('unsentSessions(sessions, plans, isSettled, interruptedIn, nowMs)', () => {
  it('lists those whose plan says where to send them, broken-off ones too', () => {
    const broken = { ...session, id: 'broken', endedAt: null };
    const interrupted = { ...broken, id: 'interrupted', sets: [] };
    const interruptedIn = (id: string) => (id === 'interrupted' ? 1 : 0);
    expect(unsentSessions([interrupted, broken, session], [plan], never, interruptedIn, nowMs)).toEqual([
      { ...told, id: 'interrupted', sets: 1, isFilmed: true, isBrokenOff: true },
      { ...told, id: 'broken', sets: 2, isFilmed: true, isBrokenOff: true },
      { ...told, id: session.id, sets: 2, isFilmed: true },
    ]);
  });

  it('lists those without a set only where something was said in them', () => {
    const silent = { ...session, sets: [], remark: '', painLimit: 4, painBefore: 2 };
    const idsOf = (changed: Partial<SessionDocument>) =>
      unsentSessions([{ ...silent, ...changed }], [plan], never, none, nowMs).length;
    expect(idsOf({})).toBe(0);
    expect(idsOf({ check: { asked: 'new', signs: [], takenBack: [] } })).toBe(0);
    expect(idsOf({ painBefore: 5 })).toBe(1);
    expect(idsOf({ check: { asked: 'new', signs: ['calf'], takenBack: [] } })).toBe(1);
    expect(idsOf({ check: { asked: 'new', signs: [], takenBack: ['calf'] } })).toBe(1);
    expect(idsOf({ endedBecause: { reason: 'other', fell: null } })).toBe(1);
    expect(idsOf({ remark: 'My doctor wants to see it first.' })).toBe(1);
    const settled = {
      visitId: session.id,
      by: 'professional',
      who: 'my doctor',
      at: session.startedAt,
    } as const;
    expect(idsOf({ settles: [settled] })).toBe(1);
  });

  it('says where nothing was filmed, and where it is but an answer', () => {
    const sets = session.sets.map((set) => ({ ...set, sessionId: null }));
    const silence = { reason: 'away' as const, since: session.startedAt };
    const answer = { ...session, id: 'answer', sets: [], silence };
    expect(unsentSessions([{ ...session, sets }, answer], [plan], never, none, nowMs)).toEqual([
      { ...told, id: session.id, sets: 2, isFilmed: false },
      { ...told, id: 'answer', sets: 0, isFilmed: false, isAnswer: true },
    ]);
  });

  it('leaves out those that were sent, and those without a plan or a key', () => {
    const free = { ...session, id: 'free', planId: null };
    expect(unsentSessions([free, session], [plan], (id) => id === session.id, none, nowMs)).toEqual([]);
    expect(unsentSessions([session], [{ ...plan, returnKeys: [] }], never, none, nowMs)).toEqual([]);
  });

  it('does not remind after 30 days', () => {
    expect(unsentSessions([session], [plan], never, none, nowMs + 28 * dayMs)).toHaveLength(1);
    expect(unsentSessions([session], [plan], never, none, nowMs + 30 * dayMs)).toEqual([]);
  });
});
