import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '#core/problem';
import type { SignId } from '#core/safety/signs';
import { notedConditions } from '#documents/plan/notedConditions';
import { parseSession } from '#documents/session/parseSession';
import type { SessionCheck, SessionDocument } from '#documents/session/sessionDocument';
import { smallItem } from '../../../support/smallPlan';
import { smallSession } from '../../../support/smallSession';

function problemOf(wrong: string): string | null {
  try {
    parseSession(wrong);
    return null;
  } catch (error) {
    if (isProblem(error, 'session')) return error.message;
    throw error;
  }
}

function changed(change: (session: SessionDocument) => unknown): string {
  const session = smallSession();
  change(session);
  return JSON.stringify(session);
}

const checked = (...signs: SignId[]): SessionCheck => ({ asked: 'all', signs, takenBack: [] });

/** The same as version 3 had it. */
function ofVersion3() {
  const { afterLast, sets, ...session } = smallSession();
  return { ...session, version: 3, sets: sets.map(({ conditions, ...set }) => set) };
}

/** One or more sentences, the last with what to do. */
const sentences = /^This .*\. (Choose|Save|Update) [^.]*\.$/s;

describe('parseSession(text)', () => {
  it('gives back what was written', () => {
    expect(parseSession(JSON.stringify(smallSession()))).toEqual(smallSession());
  });

  it('accepts a session in progress without a plan and without sets', () => {
    const open = changed((session) =>
      Object.assign(session, {
        endedAt: null,
        patient: '',
        planId: null,
        painAfter: null,
        remark: '',
        sets: [],
      }),
    );
    expect(problemOf(open)).toBeNull();
  });

  it('reads a session of version 1, in which nothing but pain was asked of the body', () => {
    const { isUnfilmed, silence, ...version2 } = ofVersion3();
    const { painLimit, painBySide, check, wentOnAbove, endedBecause, settles, ...older } = version2;
    expect(parseSession(JSON.stringify({ ...older, version: 1 }))).toEqual(smallSession());
  });

  it('reads a session of version 2, which was filmed as far as it says, and is no answer to a silence', () => {
    const { isUnfilmed, silence, ...older } = { ...ofVersion3(), painLimit: 3 };
    expect(parseSession(JSON.stringify({ ...older, version: 2 }))).toEqual({
      ...smallSession(),
      painLimit: 3,
    });
  });

  it('reads a session of version 3, which notes nothing of the conditions and of the day after', () => {
    const silence = { reason: 'away', since: '2026-03-25T06:07:08.000Z' };
    const older = { ...ofVersion3(), sets: [], silence };
    expect(parseSession(JSON.stringify(older))).toEqual({ ...smallSession(), sets: [], silence });
    expect(parseSession(JSON.stringify(ofVersion3()))).toEqual(smallSession());
    expect(problemOf(JSON.stringify({ ...ofVersion3(), sets: ['a set'] }))).toMatch(sentences);
  });

  it('accepts under what a set was done, and how the knee was after the last session', () => {
    const conditions = notedConditions(smallItem({ feedback: 'none' }), { footwear: 'shoes' });
    const noted = changed((session) => {
      session.sets[0]!.conditions = { ...conditions, load: { kind: 'weight', level: '5 kg', where: 'hand' } };
      session.afterLast = {
        visitId: '3f4a6d0e-93ff-4a8e-8f8d-5a6c1b2e7d11',
        worst: 3,
        swelling: 'much-more',
      };
    });
    expect(problemOf(noted)).toBeNull();
    expect(conditions).toMatchObject({ seatHeightCm: 46, footwear: 'shoes', feedback: 'none', isTest: true });
  });

  it('accepts what was done without filming, and why nothing was done', () => {
    const unfilmed = changed((session) => {
      session.isUnfilmed = true;
      session.sets[0]!.sessionId = null;
    });
    const silent = changed((session) => {
      session.silence = { reason: 'away', since: '2026-03-25T06:07:08.000Z' };
      session.sets = [];
    });
    expect([problemOf(unfilmed), problemOf(silent)]).toEqual([null, null]);
  });

  it('accepts what was said of the body', () => {
    const said = changed((session) =>
      Object.assign(session, {
        painLimit: 3,
        painBySide: { before: { left: 0, right: null }, after: { left: 1, right: 2 } },
        check: { ...checked('gave-way'), takenBack: ['calf'] },
        wentOnAbove: [{ when: 'during', score: 4, limit: 3, at: '2026-04-05T06:17:08.000Z' }],
        endedBecause: { reason: 'gave-way', fell: false },
        settles: [
          { visitId: session.planId, by: 'professional', who: 'a doctor', at: '2026-04-05T06:08:08.000Z' },
        ],
      }),
    );
    expect(problemOf(said)).toBeNull();
  });

  it('says of text that is not JSON, and of other JSON, that it is not a session document', () => {
    expect(problemOf('{')).toBe(
      'This is not a session document: it is not JSON. Choose a file that was saved here.',
    );
    expect(problemOf('{"format":"overfoot-session","version":1}')).toBe(
      'This is not a session document. Choose a file that was saved here.',
    );
  });

  it('says of a newer version that the program must be updated', () => {
    expect(problemOf(changed((session) => Object.assign(session, { version: 5 })))).toBe(
      'This session document is of version 5; this program reads up to 4. Update the program.',
    );
  });

  it.each<[string, (session: SessionDocument) => unknown, RegExp]>([
    ['a version that never was', (v) => Object.assign(v, { version: 0 }), /"version"/],
    ['a field too many', (v) => Object.assign(v, { name: 'somebody' }), /name/],
    ['a field that is missing', (v) => Reflect.deleteProperty(v, 'effort'), /"effort"/],
    ['pain above 10', (v) => (v.painBefore = 11), /"painBefore"/],
    ['pain below 0', (v) => (v.sets[0]!.painDuring = -1), /"sets\.0\.painDuring"/],
    ['half a step of pain', (v) => (v.painAfter = 2.5), /"painAfter"/],
    ['effort above 10', (v) => (v.effort = 12), /"effort"/],
    ['a pseudonym as long as a letter', (v) => (v.patient = 'x'.repeat(61)), /"patient"/],
    ['a remark as long as a book', (v) => (v.remark = 'x'.repeat(2001)), /"remark"/],
    ['a reason as long as a letter', (v) => (v.sets[0]!.cutShort = 'x'.repeat(301)), /"sets\.0\.cutShort"/],
    ['an empty reason', (v) => (v.sets[0]!.cutShort = ''), /"sets\.0\.cutShort"/],
    ['a plan id that is none', (v) => (v.planId = 'plan-7'), /"planId"/],
    ['a date that is none', (v) => (v.startedAt = '5 April'), /"startedAt"/],
    ['a task that is none', (v) => Object.assign(v.sets[0]!, { task: 'jump' }), /"sets\.0\.task"/],
    ['both sides at once', (v) => Object.assign(v.sets[1]!, { side: 'both' }), /"sets\.1\.side"/],
    ['set number 0', (v) => (v.sets[1]!.number = 0), /"sets\.1\.number"/],
    ['hours of holding', (v) => (v.sets[1]!.heldMs = 4 * 3_600_000 + 1), /"sets\.1\.heldMs"/],
    ['a session id that is none', (v) => (v.sets[0]!.sessionId = '12'), /"sets\.0\.sessionId"/],
    ['sets without end', (v) => (v.sets = Array.from({ length: 1001 }, () => v.sets[1]!)), /"sets"/],
    ['a recording of what was not filmed', (v) => (v.isUnfilmed = true), /was not filmed, but names/],
    [
      'an answer to a silence in which something was done',
      (v) => (v.silence = { reason: 'away', since: '2026-03-25T06:07:08.000Z' }),
      /why nothing was done, but has sets/,
    ],
    [
      'an answer that is none',
      (v) => Object.assign(v, { silence: { reason: 'lazy', since: v.startedAt }, sets: [] }),
      /"silence\.reason"/,
    ],
    ['an end before the start', (v) => (v.endedAt = '2026-04-05T06:07:07.999Z'), /ends before it starts/],
    ['a recording named twice', (v) => v.sets.push({ ...v.sets[0]!, number: 2 }), /name the same recording/],
    ['a task that was held', (v) => (v.sets[0]!.heldMs = 5), /set 1 has a hold time/],
    [
      'a hold that was measured',
      (v) => (v.sets[1]!.sessionId = '8b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d12'),
      /set 2 names a recording/,
    ],
    ['a sign that is none', (v) => (v.check = checked('headache' as 'calf')), /"check\.signs\.0"/],
    [
      'a sign said and taken back at once',
      (v) => (v.check = { ...checked('calf'), takenBack: ['calf'] }),
      /both said and taken back/,
    ],
    ['a reason that is none', (v) => Object.assign(v, { endedBecause: { reason: 'rain' } }), /"endedBecause/],
    [
      'a settlement by nobody',
      (v) => (v.settles = [{ visitId: v.id, by: 'therapist', who: '', at: '2026-04-06T06:07:08.000Z' }]),
      /"settles\.0\.who"/,
    ],
    [
      'a knee that hurt more before than the most before',
      (v) => (v.painBySide = { before: { left: 3, right: 0 }, after: { left: 2, right: 0 } }),
      /pain before is not that of its knees/,
    ],
    [
      'no knee that hurt as much as the most after',
      (v) => (v.painBySide = { before: { left: 0, right: 0 }, after: { left: null, right: null } }),
      /pain after is not that of its knees/,
    ],
    ['a hold with repetitions', (v) => (v.sets[1]!.prescribedRepetitions = 3), /set 2 has repetitions/],
  ])('says where and what to do for %s', (_, change, where) => {
    const problem = problemOf(changed(change));
    expect(problem).toMatch(where);
    expect(problem).toMatch(sentences);
  });

  it('never crashes on text of any kind', () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.json()), (anything) => {
        expect(problemOf(anything)).toMatch(sentences);
      }),
    );
  });
});
