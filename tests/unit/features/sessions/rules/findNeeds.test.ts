import { describe, expect, it } from 'vitest';
import { findNeeds } from '#features/sessions/rules/findNeeds';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { listedRecording, listedSession, readingOf } from '../../../../support/listedSession';

const needs = (change: Partial<ListedSession>) => findNeeds(listedSession(change));

describe('findNeeds(session)', () => {
  it('finds nothing in a session that went as planned', () => {
    expect(needs({})).toEqual([]);
  });

  it('counts repetitions out of line over all sets, with their one direction', () => {
    const sets = [
      listedRecording({ reading: readingOf(['in-line', ['out-of-line', 'inward']]) }),
      listedRecording({ reading: readingOf([['out-of-line', 'inward'], 'in-line', 'near-limit']) }),
    ];
    expect(needs({ sets })).toEqual([
      { kind: 'out-of-line', repetitions: 2, ofMeasured: 5, ways: ['inward'], measures: [] },
    ]);
  });

  it('counts them of those that were measured, not of all', () => {
    const reading = readingOf([['out-of-line', 'outward'], 'in-line', 'not-measured', 'not-measured']);
    expect(needs({ sets: [listedRecording({ reading })] })).toEqual([
      { kind: 'out-of-line', repetitions: 1, ofMeasured: 2, ways: ['outward'], measures: [] },
      { kind: 'not-measured', repetitions: 2, of: 4, reason: null },
    ]);
  });

  it('gives both directions where the knee went out both ways', () => {
    const reading = readingOf([
      ['out-of-line', 'outward'],
      ['out-of-line', 'inward'],
    ]);
    expect(needs({ sets: [listedRecording({ reading })] })).toMatchObject([{ ways: ['outward', 'inward'] }]);
  });

  it('does not report a repetition near the limit', () => {
    expect(needs({ sets: [listedRecording({ reading: readingOf(['near-limit']) })] })).toEqual([]);
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
        Array.from({ length: of }, (_, i) => (i < unmeasured ? 'not-measured' : 'in-line')),
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
      listedRecording({ reading: { ...readingOf([['out-of-line', 'inward']]), isWaiting: true } }),
      listedRecording({ reading: { state: 'unreadable', sentence: 'Gone.' } }),
    ];
    expect(needs({ sets }).map(({ kind }) => kind)).toEqual(['out-of-line', 'unreadable', 'waiting']);
  });

  it('reports sets of the plan that were not done; a set on two lines counts once', () => {
    const sets = [listedRecording({ line: { number: 1 } }), listedRecording({ line: { number: 1 } })];
    expect(needs({ sets, plannedSets: 3 })).toEqual([{ kind: 'sets-missing', done: 1, of: 3 }]);
    expect(needs({ sets, plannedSets: null })).toEqual([]);
  });

  it('puts pain first', () => {
    const sets = [
      listedRecording({
        line: { painDuring: 6, cutShort: 'Pain.' },
        reading: readingOf([['out-of-line', 'inward'], 'not-measured']),
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
