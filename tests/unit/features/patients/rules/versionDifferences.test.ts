import { describe, expect, it } from 'vitest';
import {
  planDifferences,
  reviewDifferences,
  sessionDifferences,
} from '#features/patients/rules/versionDifferences';
import { smallItem, smallPlan } from '../../../../support/smallPlan';
import { smallSession } from '../../../../support/smallSession';

const session = { ...smallSession(), painAfter: 2, remark: '', settles: [] };

describe('sessionDifferences(other, counts)', () => {
  it('says what differs, the other one first', () => {
    const settles = [
      { visitId: session.id, by: 'therapist' as const, who: 'AB', at: '2026-04-06T12:00:00.000Z' },
    ];
    expect(
      sessionDifferences({ ...session, painAfter: null, settles }, { ...session, remark: 'Tired.' }),
    ).toEqual([
      'Pain after: not said; the one that counts: 2 of 10.',
      'Remark: none; the one that counts: “Tired.”.',
      'Settled: AB on Mon 6 Apr 2026; the one that counts: by nobody.',
    ]);
  });

  it('is empty for the same, and never for what differs', () => {
    expect(sessionDifferences(session, { ...session })).toEqual([]);
    expect(sessionDifferences({ ...session, isUnfilmed: !session.isUnfilmed }, session)).toEqual([
      'They differ in details that are not listed here.',
    ]);
  });
});

describe('planDifferences(other, counts)', () => {
  it('names items that are in one of them only', () => {
    const [one, two] = [
      smallPlan({ items: [smallItem()] }),
      smallPlan({ items: [smallItem(), smallItem()] }),
    ];
    const [only] = planDifferences(one, two);
    expect(planDifferences(one, two)).toHaveLength(1);
    expect(only).toMatch(/^2\. .*: nothing; the one that counts: /);
    expect(planDifferences(two, one)[0]).toMatch(/^2\. .*; the one that counts: nothing\.$/);
  });
});

describe('reviewDifferences(other, counts)', () => {
  const at = '2026-04-06T12:00:00.000Z';
  const excluded = {
    change: { kind: 'exclude' as const, atMs: 4000, reason: 'Lost balance' },
    by: 'KN',
    at,
  };
  const placed = (xNorm: number) => ({
    change: { kind: 'move-point' as const, timeMs: 2000, point: 'right_knee' as const, xNorm, yNorm: 0.5 },
    by: 'KN',
    at,
  });
  const sided = { change: { kind: 'working-side' as const, side: 'left' as const }, by: '', at };

  it('says what is left out, then what only the one that counts has, each sentence once', () => {
    const other = {
      corrections: [excluded, placed(0.4), placed(0.41)],
      cues: [{ atMs: 4000, text: 'Slower' }],
    };
    expect(reviewDifferences(other, { corrections: [sided], cues: [] })).toEqual([
      'Left out: The repetition at 4.0 s does not count: Lost balance (KN)',
      'Left out: The right knee was placed by hand at 2.0 s. (KN)',
      'Left out: Cue at 4.0 s: “Slower”',
      'Only in the one that counts: The left leg is the working leg.',
    ]);
  });

  it('is empty where the one that counts has all of it', () => {
    const counts = { corrections: [sided, excluded], cues: [] };
    expect(reviewDifferences({ corrections: [excluded], cues: [] }, counts)).toEqual([]);
  });
});
