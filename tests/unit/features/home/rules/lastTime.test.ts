import { describe, expect, it } from 'vitest';
import { lastSession, lastTimeOf } from '#features/home/rules/lastTime';
import { smallSession } from '../../../../support/smallSession';

const session = smallSession();
const planId = session.planId!;

describe('lastSession(sessions, planId)', () => {
  it('is the newest of the plan in which something was done', () => {
    const stopped = { ...session, id: 'newest', sets: [] };
    const ofOtherPlan = { ...session, id: 'other', planId: null };
    expect(lastSession([stopped, ofOtherPlan, session], planId)).toBe(session);
    expect(lastSession([stopped, ofOtherPlan], planId)).toBeNull();
  });
});

describe('lastTimeOf(session, counts)', () => {
  const count = (mode: number, of: number) => ({
    expected: mode,
    low: 0,
    high: of,
    mode,
    countChances: [],
    chancesInLine: Array.from({ length: of }, () => mode / of),
  });

  it('adds up what was in line, and takes the most pain', () => {
    expect(lastTimeOf(session, [count(4, 6), count(5, 8)])).toEqual({
      id: session.id,
      startedAt: session.startedAt,
      sets: 2,
      painDuring: 3,
      inLine: { about: 9, of: 14 },
    });
  });

  it('says nothing of what was not measured or not answered', () => {
    const silent = { ...session, sets: session.sets.map((set) => ({ ...set, painDuring: null })) };
    expect(lastTimeOf(silent, [])).toMatchObject({ painDuring: null, inLine: null });
  });
});
