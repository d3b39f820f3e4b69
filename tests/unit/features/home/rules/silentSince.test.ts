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

/** An answer, so many days after the session. */
function answer(days: number, since = last): SessionDocument {
  const startedAt = new Date(lastMs + days * dayMs).toISOString();
  return { ...session, id: `answer ${days}`, startedAt, sets: [], silence: { reason: 'away', since } };
}

describe('silentSince(sessions, planId, isClosed, nowMs)', () => {
  it('asks from seven whole days on', () => {
    expect(silentSince([session], planId, never, lastMs + 7 * dayMs - 1)).toBeNull();
    expect(silentSince([session], planId, never, lastMs + 7 * dayMs)).toBe(last);
    expect(silentSince([session], planId, never, lastMs + 40 * dayMs)).toBe(last);
  });

  it('asks nobody who has not begun, and nothing of another plan', () => {
    expect(silentSince([], planId, never, lastMs + 9 * dayMs)).toBeNull();
    expect(silentSince([session], 'another', never, lastMs + 9 * dayMs)).toBeNull();
  });

  it('takes the newest session, with or without sets', () => {
    const looked = { ...session, startedAt: new Date(lastMs + 5 * dayMs).toISOString(), sets: [] };
    expect(silentSince([looked, session], planId, never, lastMs + 9 * dayMs)).toBeNull();
  });

  it('asks once: not after an answer, nor after it was closed', () => {
    expect(silentSince([answer(8), session], planId, never, lastMs + 30 * dayMs)).toBeNull();
    expect(silentSince([session], planId, (since) => since === last, lastMs + 30 * dayMs)).toBeNull();
  });

  it('asks again after the next session and the next seven days', () => {
    const next = { ...session, id: 'next', startedAt: new Date(lastMs + 10 * dayMs).toISOString() };
    const sessions = [next, answer(8), session];
    expect(silentSince(sessions, planId, (since) => since === last, lastMs + 17 * dayMs)).toBe(
      next.startedAt,
    );
  });

  it('does not ask those who were told to have it seen first', () => {
    const fell = { ...session, endedBecause: { reason: 'gave-way' as const, fell: false } };
    expect(silentSince([fell], planId, never, lastMs + 9 * dayMs)).toBeNull();
    const pain = { ...session, painAfter: 6 };
    expect(silentSince([pain], planId, never, lastMs + 9 * dayMs)).toBe(last);
  });

  it('asks nothing where the date was set back', () => {
    expect(silentSince([session], planId, never, lastMs - 30 * dayMs)).toBeNull();
  });
});
