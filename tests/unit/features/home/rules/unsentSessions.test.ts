import { describe, expect, it } from 'vitest';
import { unsentSessions } from '#features/home/rules/unsentSessions';
import { smallSession } from '../../../../support/smallSession';

const session = smallSession();
const plan = { id: session.planId!, returnKey: 'age1invented' };
const dayMs = 24 * 3_600_000;
const nowMs = Date.parse(session.startedAt) + dayMs;
const never = () => false;
const told = { startedAt: session.startedAt, isAnswer: false, recipient: 'age1invented' };

describe('unsentSessions(sessions, plans, isSettled, nowMs)', () => {
  it('lists those whose plan says where to send them, with nothing done, too', () => {
    const stopped = { ...session, id: 'stopped', sets: [], endedAt: null };
    expect(unsentSessions([stopped, session], [plan], never, nowMs)).toEqual([
      { ...told, id: 'stopped', sets: 0, isFilmed: false },
      { ...told, id: session.id, sets: 2, isFilmed: true },
    ]);
  });

  it('says where nothing was filmed, and where it is but an answer', () => {
    const sets = session.sets.map((set) => ({ ...set, sessionId: null }));
    const silence = { reason: 'away' as const, since: session.startedAt };
    const answer = { ...session, id: 'answer', sets: [], silence };
    expect(unsentSessions([{ ...session, sets }, answer], [plan], never, nowMs)).toEqual([
      { ...told, id: session.id, sets: 2, isFilmed: false },
      { ...told, id: 'answer', sets: 0, isFilmed: false, isAnswer: true },
    ]);
  });

  it('leaves out those that were sent, and those without a plan or a key', () => {
    const free = { ...session, id: 'free', planId: null };
    expect(unsentSessions([free, session], [plan], (id) => id === session.id, nowMs)).toEqual([]);
    expect(unsentSessions([session], [{ ...plan, returnKey: null }], never, nowMs)).toEqual([]);
  });

  it('does not remind after 30 days', () => {
    expect(unsentSessions([session], [plan], never, nowMs + 28 * dayMs)).toHaveLength(1);
    expect(unsentSessions([session], [plan], never, nowMs + 30 * dayMs)).toEqual([]);
  });
});
