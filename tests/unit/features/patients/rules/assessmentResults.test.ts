import { describe, expect, it } from 'vitest';
import type { AssessmentRecord } from '#documents/patient/patientDocument';
import { assessmentCourses, parseTries } from '#features/patients/rules/assessmentResults';

const rise = (day: number, left: number[], right: number[], change: Partial<AssessmentRecord> = {}) => ({
  id: `${day}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d11`,
  at: `2026-04-0${day}T08:00:00.000Z`,
  by: 'AB',
  test: 'one-leg-rise' as const,
  asDone: 'seat 46 cm',
  tries: { left, right },
  worstPain: null,
  remark: '',
  withdrawn: null,
  ...change,
});

describe('assessmentCourses(records, painfulSide)', () => {
  it('puts the painful leg against the other: 18 of 24 is 75 %', () => {
    const [course] = assessmentCourses([rise(1, [24], [18])], 'right');
    expect(course!.done[0]!.results).toEqual({ left: 24, right: 18 });
    expect(course!.symmetry).toMatchObject({ involved: 'right', found: { pct: 75, interval: null } });
    expect(assessmentCourses([rise(1, [24], [18])], 'both')[0]!.symmetry).toBeNull();
    expect(assessmentCourses([rise(1, [], [18])], 'right')[0]!.symmetry).toBeNull();
  });

  it('has an interval where an error of the test is published', () => {
    const [course] = assessmentCourses([rise(1, [10], [8], { test: 'knee-to-wall' })], 'right');
    // Fieller, SEM .685 each: f = 1.96 x .685 = 1.343; (80 -+ 1.343 sqrt(100 + 64 - 1.804)) / (100 - 1.804).
    const { interval } = course!.symmetry!.found;
    expect(interval!.lowPct).toBeCloseTo(64.0, 0);
    expect(interval!.highPct).toBeCloseTo(98.9, 0);
  });

  it('has no percentage of points', () => {
    const points = rise(1, [2], [4], { test: 'step-down-quality' });
    expect(assessmentCourses([points], 'right')[0]!.symmetry).toBeNull();
  });

  it('tells a change only where the protocol was the same, and leaves out what was withdrawn', () => {
    const mistaken = rise(2, [1], [1], { withdrawn: { at: '2026-04-03T08:00:00.000Z', by: 'AB' } });
    const [same] = assessmentCourses([rise(1, [20], [12]), mistaken, rise(3, [24], [18])], 'right');
    expect(same!.done).toHaveLength(2);
    expect(same!.changes.right).toMatchObject({ difference: 6 });
    const lower = rise(3, [24], [18], { asDone: 'seat 42 cm' });
    const [other] = assessmentCourses([rise(1, [20], [12]), lower], 'right');
    expect(other!.changes.right).toMatchObject({ kind: 'other-protocol' });
  });
});

describe('parseTries(text, test)', () => {
  it('reads numbers with spaces, commas or semicolons between, and decimals', () => {
    expect(parseTries('18 20', { most: 50 })).toEqual([18, 20]);
    expect(parseTries('18, 20;21.5', { most: 50 })).toEqual([18, 20, 21.5]);
    expect(parseTries('7,5 8', { most: null })).toEqual([7.5, 8]);
    expect(parseTries(' ', { most: 50 })).toEqual([]);
  });

  it('is null where one is no number of the test', () => {
    for (const wrong of ['51', '-1', 'twenty', '18 x']) expect(parseTries(wrong, { most: 50 })).toBeNull();
  });
});
