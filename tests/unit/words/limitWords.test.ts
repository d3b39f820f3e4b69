import { describe, expect, it } from 'vitest';
import { limitEnds } from '#core/measures/limitEnd';
import { findMeasure, measureIds } from '#core/measures/measures';
import { defaultLimits } from '#core/protocol/limits';
import {
  addedLimitsWords,
  beyondSentence,
  kneeLimitWords,
  limitFactor,
  limitName,
  limitWords,
} from '#words/limitWords';

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

describe('beyondSentence(measure, end, limit)', () => {
  it('says how common it is among healthy people to go beyond a limit, by the study that gives it', () => {
    // (10 - 8.4) / 5.1 = .31 standard deviations: 38 % are beyond.
    expect(beyondSentence('knee-angle', 'most', 10)).toBe(
      'Of 30 healthy women in a single-leg squat, about 4 of 10 went beyond 10° inward, going by their mean and ' +
        'standard deviation of 8.4 ± 5.1° (Herrington 2014, Knee 21:514; by hand, at the deepest point).',
    );
    // (11 - 7.4) / 3.8 = .95: 17 %.
    expect(beyondSentence('pelvic-drop', 'most', 11)).toContain('about 2 of 10');
    expect(beyondSentence('trunk-lean', 'most', 25)).toContain('fewer than 1 of 10');
    expect(beyondSentence('knee-angle', 'most', 1)).toContain('about 9 of 10');
    expect(beyondSentence('knee-angle', 'least', -10)).toBeNull();
  });
});

describe('kneeLimitWords(limits)', () => {
  it('gives both limits of the knee angle', () => {
    expect(kneeLimitWords({ 'knee-angle': { least: -8, most: 14 } })).toBe('14° inward, 8° outward');
  });
});
