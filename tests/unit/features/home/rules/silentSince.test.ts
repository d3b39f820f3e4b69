import { describe, expect, it } from 'vitest';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { silentSince } from '#features/home/rules/silentSince';
import { smallSession } from '../../../../support/smallSession';

const session = { ...smallSession(), painLimit: 4 };
const planId = session.planId!;
const last = session.startedAt;
const dayMs = 24 * 3_600_000;
const lastMs = Date.parse(last);
const never = () => false;
/** Two days before it was first followed. */
const accepted = new Date(lastMs - 2 * dayMs).toISOString();

/** An answer, so many days after the session. */
function answer(days: number, since = last): SessionDocument {
  const startedAt = new Date(lastMs + days * dayMs).toISOString();
  return { ...session, id: `answer ${days}`, startedAt, sets: [], silence: { reason: 'away', since } };
}

describe('silentSince(sessions, planId, acceptedAt, isClosed, nowMs)', () => {
  it('asks from seven whole days on', () => {
    expect(silentSince([session], planId, accepted, never, lastMs + 7 * dayMs - 1)).toBeNull();
    expect(silentSince([session], planId, accepted, never, lastMs + 7 * dayMs)).toBe(last);
    expect(silentSince([session], planId, accepted, never, lastMs + 40 * dayMs)).toBe(last);
  });

  it('asks those who have never begun, seven days after they accepted the plan, once', () => {
    const ask = (sessions: SessionDocument[], days: number, isClosed: (since: string) => boolean = never) =>
      silentSince(sessions, planId, accepted, isClosed, Date.parse(accepted) + days * dayMs);
    expect(ask([], 6.9)).toBeNull();
    expect(ask([], 7)).toBe(accepted);
    expect(ask([{ ...session, planId: null }], 7)).toBe(accepted);
    expect(ask([answer(8, accepted)], 30)).toBeNull();
    expect(ask([], 30, (since) => since === accepted)).toBeNull();
  });

  it('takes the newest session, with or without sets', () => {
    const looked = { ...session, startedAt: new Date(lastMs + 5 * dayMs).toISOString(), sets: [] };
    expect(silentSince([looked, session], planId, accepted, never, lastMs + 9 * dayMs)).toBeNull();
  });

  it('asks once: not after an answer, nor after it was closed', () => {
    expect(silentSince([answer(8), session], planId, accepted, never, lastMs + 30 * dayMs)).toBeNull();
    expect(
      silentSince([session], planId, accepted, (since) => since === last, lastMs + 30 * dayMs),
    ).toBeNull();
  });

  it('asks again after the next session and the next seven days', () => {
    const next = { ...session, id: 'next', startedAt: new Date(lastMs + 10 * dayMs).toISOString() };
    const sessions = [next, answer(8), session];
    expect(silentSince(sessions, planId, accepted, (since) => since === last, lastMs + 17 * dayMs)).toBe(
      next.startedAt,
    );
  });

  it('does not ask those who were told to have it seen first', () => {
    const fell = { ...session, endedBecause: { reason: 'gave-way' as const, fell: false } };
    expect(silentSince([fell], planId, accepted, never, lastMs + 9 * dayMs)).toBeNull();
    const pain = { ...session, painAfter: 6 };
    expect(silentSince([pain], planId, accepted, never, lastMs + 9 * dayMs)).toBe(last);
  });

  it('asks nothing where the date was set back', () => {
    expect(silentSince([session], planId, accepted, never, lastMs - 30 * dayMs)).toBeNull();
  });
});
