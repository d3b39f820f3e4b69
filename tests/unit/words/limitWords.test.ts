import { describe, expect, it } from 'vitest';
import { limitEnds } from '#core/measures/limitEnd';
import { findMeasure, measureIds } from '#core/measures/measures';
import { defaultLimits } from '#core/protocol/limits';
import { addedLimitsWords, limitFactor, limitName, limitWords } from '#words/limitWords';

describe('limitWords(measure, end, value), limitName(measure, end)', () => {
  it('say a direction in words, without a sign', () => {
    expect(limitWords('trunk-lean', 'least', -10)).toBe('10° away from the working side');
    expect(limitWords('knee-over-foot', 'most', 0.06)).toBe('6 % inward');
    expect(limitWords('depth', 'most', 0.29)).toBe('at most 29 %');
    expect(limitWords('pelvis-place', 'least', 0.5)).toBe('at least 50 %');
    expect(limitName('pelvic-drop', 'most')).toBe('free side down');
    expect(limitWords('knee-angle', 'least', -8.5)).toBe('8.5° outward');
  });

  it('show every proposed limit as a number above 0', () => {
    for (const id of measureIds)
      for (const end of limitEnds)
        expect(findMeasure(id).limits[end].first * limitFactor(id, end)).toBeGreaterThan(0);
  });
});

describe('addedLimitsWords(limits)', () => {
  it('lists what has a limit besides the knee angle, and nothing where there is none', () => {
    const others = { depth: { most: 0.29 }, 'trunk-lean': { least: -8, most: 10 } };
    expect(addedLimitsWords({ ...defaultLimits, ...others })).toBe(
      'trunk lean 8° away from the working side, trunk lean 10° towards the working side, depth at most 29 %',
    );
    expect(addedLimitsWords(defaultLimits)).toBe('');
  });
});
