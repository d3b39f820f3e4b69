import { describe, expect, it } from 'vitest';
import type { Verdict } from '#core/scoring/verdict';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { listedRecording, listedSession, readingOf } from '../../../../support/listedSession';
import { smallPlan } from '../../../../support/smallPlan';

const needs = (change: Partial<ListedSession>) => findNeeds(listedSession(change));

describe('findNeeds(session)', () => {
  it('finds nothing in a session that went as planned', () => {
    expect(needs({})).toEqual([]);
  });

  it('counts repetitions out of line over all sets, with their one direction', () => {
    const sets = [
      listedRecording({ reading: readingOf(['in', ['out', 'inward']]) }),
      listedRecording({ reading: readingOf([['out', 'inward'], 'in', 'cant-tell']) }),
    ];
    expect(needs({ sets })).toEqual([
      { kind: 'out-of-line', repetitions: 2, probable: 0, ofMeasured: 5, ways: ['inward'], measures: [] },
    ]);
  });

  it('counts them of those that were measured, not of all', () => {
    const reading = readingOf([['out', 'outward'], 'in', 'not-measured', 'not-measured']);
    expect(needs({ sets: [listedRecording({ reading })] })).toEqual([
      { kind: 'out-of-line', repetitions: 1, probable: 0, ofMeasured: 2, ways: ['outward'], measures: [] },
      { kind: 'not-measured', repetitions: 2, of: 4, reason: null },
    ]);
  });

  it('gives both directions where the knee went out both ways', () => {
    const reading = readingOf([
      ['out', 'outward'],
      ['out', 'inward'],
    ]);
    expect(needs({ sets: [listedRecording({ reading })] })).toMatchObject([{ ways: ['outward', 'inward'] }]);
  });

  it('reports that most were too close to tell, not that some were', () => {
    const found = (...verdicts: Verdict[]) =>
      needs({ sets: [listedRecording({ reading: readingOf(verdicts) })] });
    expect(found('cant-tell', 'cant-tell', 'in', 'probably-in')).toEqual([]);
    expect(found('cant-tell', 'cant-tell', 'in')).toEqual([
      { kind: 'mostly-untold', repetitions: 2, ofMeasured: 3 },
    ]);
  });

  it('counts a repetition that was probably out of line as out', () => {
    const reading = readingOf([['probably-out', 'inward'], 'probably-in']);
    expect(needs({ sets: [listedRecording({ reading })] })).toMatchObject([
      { kind: 'out-of-line', repetitions: 1, probable: 1, ofMeasured: 2 },
    ]);
  });

  it('finds a pain above the limit, not one at it', () => {
    expect(needs({ painBefore: 4, painAfter: 4 })).toEqual([]);
    expect(needs({ painBefore: 5, painAfter: 5 })).toEqual([
      { kind: 'pain-above-limit', score: 5, limit: 4, when: 'before' },
    ]);
  });

  it('accepts a limit of 0', () => {
    expect(needs({ painBefore: 1, painAfter: 1, painLimit: 0, sets: [] })).toMatchObject([
      { kind: 'pain-above-limit', score: 1, limit: 0 },
      { kind: 'sets-missing' },
    ]);
  });

  it('holds pain against no limit where none is known', () => {
    expect(needs({ painBefore: 9, painAfter: 9, painLimit: null })).toEqual([]);
  });

  it('puts what was said of the body before everything else', () => {
    const said = {
      check: { asked: 'new', signs: ['calf', 'fell'], takenBack: ['numbness'] },
      endedBecause: { reason: 'gave-way', fell: true },
      wentOnAbove: [
        { when: 'before', score: 5, limit: 4, at: '2026-04-05T06:07:08.000Z' },
        { when: 'during', score: 6, limit: 4, at: '2026-04-05T06:17:08.000Z' },
      ],
      settlement: null,
    } satisfies Partial<ListedSession>;
    const sets = [listedRecording({ line: { painDuring: 6, cutShort: 'the knee gave way' } })];
    expect(needs({ ...said, sets })).toEqual([
      { kind: 'signs', signs: ['calf', 'fell'] },
      { kind: 'stopped', reason: 'gave-way', fell: true, hasBegun: true },
      { kind: 'went-on', score: 6, limit: 4, times: 2 },
      { kind: 'pain-above-limit', score: 6, limit: 4, when: 'during' },
      { kind: 'pain-risen', from: 2, to: 6, when: 'during' },
      { kind: 'taken-back', signs: ['numbness'] },
      { kind: 'cut-short', sets: 1, firstReason: 'the knee gave way' },
    ]);
  });

  it('says of a session without sets why it did not begin, not that its sets are missing', () => {
    const change = { sets: [], painAfter: null, plannedSets: 3 };
    expect(needs({ ...change, endedBecause: { reason: 'pain', fell: null } })).toEqual([
      { kind: 'stopped', reason: 'pain', fell: null, hasBegun: false },
    ]);
    const signs = { asked: 'all', signs: ['wound'], takenBack: [] } satisfies ListedSession['check'];
    expect(needs({ ...change, check: signs, endedBecause: { reason: 'sign', fell: null } })).toEqual([
      { kind: 'signs', signs: ['wound'] },
    ]);
  });

  it('says who settled it', () => {
    const settled = {
      visitId: listedSession().id,
      by: 'therapist',
      who: 'AB',
      at: '2026-04-07T06:07:08.000Z',
    } as const;
    expect(needs({ settlement: settled })).toEqual([
      { kind: 'settled', by: 'therapist', who: 'AB', at: settled.at },
    ]);
    const earlier = { ...settled, visitId: smallPlan().id, by: 'professional', who: 'a doctor' } as const;
    expect(needs({ settles: [earlier] })).toEqual([{ kind: 'says-cleared', who: 'a doctor' }]);
  });

  it('takes a rise of one point for no rise', () => {
    expect(needs({ painBefore: 1, painAfter: 2 })).toEqual([]);
    expect(needs({ painBefore: 1, painAfter: 3 })).toEqual([
      { kind: 'pain-risen', from: 1, to: 3, when: 'after' },
    ]);
  });

  it('finds pain that rose during a set from 0, even below the limit', () => {
    const sets = [listedRecording({ line: { painDuring: 3 } }), listedRecording({ line: { painDuring: 1 } })];
    expect(needs({ painBefore: 0, painAfter: 2, sets })).toEqual([
      { kind: 'pain-risen', from: 0, to: 3, when: 'during' },
    ]);
  });

  it('finds pain that rose only afterwards', () => {
    expect(needs({ painAfter: 4 })).toEqual([{ kind: 'pain-risen', from: 2, to: 4, when: 'after' }]);
  });

  it('reports no rise without an earlier pain', () => {
    expect(needs({ painBefore: null, painAfter: 4 })).toEqual([]);
  });

  it('counts sets cut short, with the first reason', () => {
    const sets = [
      listedRecording(),
      listedRecording({ line: { cutShort: 'Doorbell.' } }),
      listedRecording({ line: { cutShort: 'Cramp.' } }),
    ];
    expect(needs({ sets })).toEqual([{ kind: 'cut-short', sets: 2, firstReason: 'Doorbell.' }]);
  });

  it('finds the view too poor from a quarter of unmeasured repetitions on, with the main reason', () => {
    const reading = (unmeasured: number, of: number) => {
      const { result, ...rest } = readingOf(
        Array.from({ length: of }, (_, i) => (i < unmeasured ? 'not-measured' : 'in')),
      );
      return { ...rest, result: { ...result, mainReason: 'view-turned' as const } };
    };
    expect(needs({ sets: [listedRecording({ reading: reading(1, 5) })] })).toEqual([]);
    expect(needs({ sets: [listedRecording({ reading: reading(2, 8) })] })).toEqual([
      { kind: 'not-measured', repetitions: 2, of: 8, reason: 'view-turned' },
    ]);
  });

  it('reports recorded sets without a repetition, but not holds and not what is still being read', () => {
    const sets = [
      listedRecording({ reading: readingOf([]) }),
      listedRecording({ reading: { state: 'none' } }),
      listedRecording({ reading: { state: 'reading' } }),
    ];
    expect(needs({ sets })).toEqual([{ kind: 'nothing-found', sets: 1 }]);
  });

  it('reports last the sets that can’t be read, and those that still wait to be measured carefully', () => {
    const sets = [
      listedRecording({ reading: { ...readingOf([['out', 'inward']]), isWaiting: true } }),
      listedRecording({ reading: { state: 'unreadable', sentence: 'Gone.' } }),
    ];
    expect(needs({ sets }).map(({ kind }) => kind)).toEqual(['out-of-line', 'unreadable', 'waiting']);
  });

  it('reports sets of the plan that were not done; a set on two lines counts once', () => {
    const sets = [listedRecording({ line: { number: 1 } }), listedRecording({ line: { number: 1 } })];
    expect(needs({ sets, plannedSets: 3 })).toEqual([{ kind: 'sets-missing', done: 1, of: 3 }]);
    expect(needs({ sets, plannedSets: null })).toEqual([]);
  });

  it('says that a session was not filmed, beside what was said of it', () => {
    const sets = [listedRecording({ line: { sessionId: null, painDuring: 6 }, reading: { state: 'none' } })];
    expect(needs({ sets, isUnfilmed: true }).map(({ kind }) => kind)).toEqual([
      'pain-above-limit',
      'pain-risen',
      'unfilmed',
    ]);
  });

  it('says why nothing was done, in whole days, and misses no set of it', () => {
    const silence = { reason: 'away' as const, since: '2026-03-28T18:07:08.000Z' };
    const nothing = { sets: [], plannedSets: 3, painBefore: null, painAfter: null };
    expect(needs({ ...nothing, silence })).toEqual([{ kind: 'silent', reason: 'away', days: 7 }]);
    expect(needs(nothing)).toEqual([{ kind: 'sets-missing', done: 0, of: 3 }]);
  });

  it('puts pain first', () => {
    const sets = [
      listedRecording({
        line: { painDuring: 6, cutShort: 'Pain.' },
        reading: readingOf([['out', 'inward'], 'not-measured']),
      }),
    ];
    expect(needs({ sets, plannedSets: 2 }).map(({ kind }) => kind)).toEqual([
      'pain-above-limit',
      'pain-risen',
      'cut-short',
      'out-of-line',
      'not-measured',
      'sets-missing',
    ]);
  });
});
