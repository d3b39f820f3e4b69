import { describe, expect, it } from 'vitest';
import { assessmentChange } from '#core/assessments/assessmentChange';
import { findAssessment } from '#core/assessments/assessments';
import { balanceReach } from '#core/assessments/balanceReach';
import { effusionGrades, swellingOf } from '#core/assessments/effusion';
import { miniSquat } from '#core/assessments/miniSquat';
import { scoreTries } from '#core/assessments/scoreTries';

describe('scoreTries(assessment, tries)', () => {
  it('takes the best try, whichever way that is', () => {
    expect(scoreTries(findAssessment('knee-to-wall'), [8.5, 9, 7])).toBe(9);
    expect(scoreTries(findAssessment('rise-five-times'), [11.2, 10.4])).toBe(10.4);
  });

  it('takes the mean where the protocol does', () => {
    const { protocol, ...others } = findAssessment('knee-to-wall');
    const mean = {
      ...others,
      protocol: { ...protocol, tries: { ...protocol.tries, taken: 'mean' as const } },
    };
    expect(scoreTries(mean, [8, 9, 13])).toBe(10);
  });

  it('is null without a try, and keeps a 0', () => {
    expect(scoreTries(findAssessment('one-leg-rise'), [])).toBeNull();
    expect(scoreTries(findAssessment('one-leg-rise'), [0])).toBe(0);
  });

  it('refuses what the test cannot give', () => {
    expect(() => scoreTries(findAssessment('one-leg-rise'), [51])).toThrow('50 at most, got 51');
    expect(() => scoreTries(findAssessment('wall-sit'), [-1])).toThrow('got -1');
    expect(() => scoreTries(findAssessment('wall-sit'), [NaN])).toThrow('got NaN');
    expect(() => scoreTries(findAssessment('knee-to-wall'), [-1])).toThrow('A try is 0 or above, got -1.');
  });
});

describe('balanceReach(reachCm, legCm)', () => {
  it('is worked out by hand', () => {
    // 60 / 80 = 75 %, 80 / 80 = 100 %, 88 / 80 = 110 %; mean 95 %.
    expect(balanceReach({ front: 60, backInward: 80, backOutward: 88 }, 80)).toEqual({
      frontPct: 75,
      backInwardPct: 100,
      backOutwardPct: expect.closeTo(110, 9) as number,
      compositePct: 95,
    });
  });

  it('refuses a leg without length and a reach below 0', () => {
    expect(() => balanceReach({ front: 60, backInward: 80, backOutward: 88 }, 0)).toThrow(RangeError);
    expect(() => balanceReach({ front: -6, backInward: 80, backOutward: 88 }, 80)).toThrow(RangeError);
  });
});

describe('miniSquat(isInward)', () => {
  const [o, i, u] = [false, true, null];
  it.each([
    [[o, o, i, i, o], 'over'],
    [[o, i, i, i, o], 'inward'],
    [[i, i, i, i, i], 'inward'],
    [[o, i, u, i, o], null],
    [[u, i, i, i, u], 'inward'],
    [[u, o, o, o, i], 'over'],
  ])('%j: %s', (isInward, found) => {
    expect(miniSquat(isInward)).toBe(found);
  });

  it('refuses other than five bends', () => {
    expect(() => miniSquat([i, i])).toThrow('got 2');
  });
});

describe('swellingOf(earlier, later)', () => {
  // Rows: earlier; columns: later, 0 to 3+.
  const [l, s, m, mm] = ['less', 'same', 'more', 'much-more'];
  it.each([
    ['0', [s, m, mm, mm, mm]],
    ['trace', [l, s, m, mm, mm]],
    ['1+', [l, l, s, mm, mm]],
    ['2+', [l, l, l, s, mm]],
    ['3+', [l, l, l, l, s]],
  ] as const)('from %s: %j', (earlier, swellings) => {
    expect(effusionGrades.map((later) => swellingOf(earlier, later))).toEqual(swellings);
  });
});

describe('assessmentChange(assessment, earlier, later, alike, ownSem)', () => {
  const alike = { rater: true, protocol: true };
  const stepDown = findAssessment('step-down-quality');

  it('tells two points by the same rater, and not one', () => {
    expect(assessmentChange(stepDown, 4, 2, alike)).toMatchObject({ kind: 'told', verdict: 'lower' });
    expect(assessmentChange(stepDown, 4, 3, alike)).toMatchObject({ kind: 'told', verdict: 'within-error' });
  });

  it('tells nothing between raters where that takes the same one', () => {
    expect(assessmentChange(stepDown, 4, 0, { ...alike, rater: false })).toEqual({ kind: 'other-rater' });
    const wall = findAssessment('knee-to-wall');
    expect(assessmentChange(wall, 8, 10, { ...alike, rater: false })).toMatchObject({ verdict: 'higher' });
  });

  it('tells nothing between protocols', () => {
    const other = assessmentChange(stepDown, 4, 0, { ...alike, protocol: false });
    expect(other).toEqual({ kind: 'other-protocol', fixed: stepDown.protocol.fixed });
  });

  it('tells a side bridge from 31 s on', () => {
    const bridge = findAssessment('side-bridge');
    expect(assessmentChange(bridge, 60, 90, alike)).toMatchObject({ verdict: 'within-error' });
    expect(assessmentChange(bridge, 60, 91, alike)).toMatchObject({ verdict: 'higher', detectable: 30.4 });
  });

  it('has no verdict where no error is known, until the practice has its own', () => {
    const rise = findAssessment('one-leg-rise');
    expect(assessmentChange(rise, 14, 22, alike)).toEqual({ kind: 'no-error-known', difference: 8 });
    // 1.96 x sqrt 2 x 1.2 = 3.33.
    expect(assessmentChange(rise, 14, 22, alike, 1.2)).toMatchObject({ kind: 'told', verdict: 'higher' });
    expect(assessmentChange(rise, 19, 22, alike, 1.2)).toMatchObject({ verdict: 'within-error' });
  });
});
