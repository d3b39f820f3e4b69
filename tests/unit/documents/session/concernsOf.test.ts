import { describe, expect, it } from 'vitest';
import { concernsOf, isHolding } from '#documents/session/concernsOf';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { settlementOf } from '#documents/session/settlementOf';
import { withTherapistsWord } from '#documents/session/withTherapistsWord';
import { smallSession } from '../../../support/smallSession';

const concerns = (change: Partial<SessionDocument>) => concernsOf({ ...smallSession(), ...change });

describe('concernsOf(session)', () => {
  it('finds none where pain stayed within the limit and no sign applied', () => {
    const check = { asked: 'new', signs: [], takenBack: ['calf'] } satisfies SessionDocument['check'];
    expect(concerns({ painLimit: 3, check })).toEqual([]);
    expect(concerns({ endedBecause: { reason: 'other', fell: false } })).toEqual([]);
  });

  it('finds no pain where it is not known how much was too much', () => {
    expect(concerns({ painLimit: null, painAfter: 9 })).toEqual([]);
  });

  it.each(['painBefore', 'painAfter'] as const)('finds %s above the limit', (when) => {
    expect(concerns({ painLimit: 3, [when]: 5 })).toEqual([{ kind: 'pain', score: 5 }]);
  });

  it('finds pain of a set above the limit, and pain with which they went on and that was corrected later', () => {
    expect(concerns({ painLimit: 2 })).toEqual([{ kind: 'pain', score: 3 }]);
    const wentOnAbove = [{ when: 'before', score: 6, limit: 4, at: '2026-04-05T06:07:08.000Z' } as const];
    expect(concerns({ painLimit: 4, wentOnAbove })).toEqual([{ kind: 'pain', score: 6 }]);
  });

  it('finds a stop because of pain, even without a score', () => {
    const nothing = { painBefore: null, painAfter: null, sets: [] };
    expect(concerns({ ...nothing, endedBecause: { reason: 'pain', fell: null } })).toEqual([
      { kind: 'pain', score: null },
    ]);
  });

  it('puts the gravest first; all but pain hold until somebody has seen it', () => {
    const found = concerns({
      painLimit: 2,
      check: { asked: 'all', signs: ['wound'], takenBack: [] },
      endedBecause: { reason: 'locked', fell: true },
    });
    expect(found).toEqual([
      { kind: 'signs', signs: ['wound'] },
      { kind: 'stopped', reason: 'locked' },
      { kind: 'fell' },
      { kind: 'pain', score: 3 },
    ]);
    expect(found.map(isHolding)).toEqual([true, true, true, false]);
  });
});

const signed = (by: 'therapist' | 'professional', visitId = smallSession().id) => ({
  visitId,
  by,
  who: by === 'therapist' ? 'AB' : 'a doctor',
  at: '2026-04-06T06:07:08.000Z',
});

describe('settlementOf(id, sessions)', () => {
  const { id } = smallSession();

  it('is what a later session says, and the therapist before anybody else', () => {
    expect(settlementOf(id, [smallSession()])).toBeNull();
    const later = { settles: [signed('professional')] };
    expect(settlementOf(id, [smallSession(), later])).toEqual(signed('professional'));
    const own = { settles: [signed('therapist')] };
    expect(settlementOf(id, [later, own])).toEqual(signed('therapist'));
    expect(settlementOf('another', [later, own])).toBeNull();
  });
});

describe('withTherapistsWord(sent, kept)', () => {
  it('keeps what the therapist signed, and nothing else of the kept version', () => {
    const kept = { ...smallSession(), settles: [signed('therapist'), signed('professional')] };
    const sent = { ...smallSession(), remark: 'Another one.' };
    expect(withTherapistsWord(sent, kept)).toEqual({ ...sent, settles: [signed('therapist')] });
    expect(withTherapistsWord(sent, smallSession())).toBe(sent);
    expect(withTherapistsWord(sent, null)).toBe(sent);
  });
});
