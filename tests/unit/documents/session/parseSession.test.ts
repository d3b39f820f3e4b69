import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isProblem } from '#core/problem';
import { parseSession } from '#documents/session/parseSession';
import type { SessionDocument } from '#documents/session/sessionDocument';
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

  it('says of text that is not JSON, and of other JSON, that it is not a session document', () => {
    expect(problemOf('{')).toBe(
      'This is not a session document: it is not JSON. Choose a file that was saved here.',
    );
    expect(problemOf('{"format":"overfoot-session","version":1}')).toBe(
      'This is not a session document. Choose a file that was saved here.',
    );
  });

  it('says of a newer version that the program must be updated', () => {
    expect(problemOf(changed((session) => Object.assign(session, { version: 2 })))).toBe(
      'This session document is of version 2; this program reads up to 1. Update the program.',
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
    ['an end before the start', (v) => (v.endedAt = '2026-04-05T06:07:07.999Z'), /ends before it starts/],
    ['a recording named twice', (v) => v.sets.push({ ...v.sets[0]!, number: 2 }), /name the same recording/],
    ['a task that was held', (v) => (v.sets[0]!.heldMs = 5), /set 1 has a hold time/],
    [
      'a hold that was measured',
      (v) => (v.sets[1]!.sessionId = '8b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d12'),
      /set 2 names a recording/,
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
