import { describe, expect, it } from 'vitest';
import type { Judgement } from '#core/scoring/judge';
import { tellingRepetition } from '#features/review/store/tellingRepetition';
import { kneeJudged } from '../../../../support/kneeJudgement';

const limits = { 'knee-angle': { least: -6, most: 10 } };
const peak = (value: number): Judgement =>
  kneeJudged({
    verdict: 'in',
    worst: { value, band: 1, sample: 0, timeMs: 0 },
    direction: value < 0 ? 'outward' : 'inward',
  });
const unmeasured = kneeJudged({ verdict: 'not-measured', reason: 'no-person' });

describe('tellingRepetition(judgements, limits)', () => {
  it('picks the repetition whose knee went farthest beyond its own limit, either way', () => {
    // Beyond the limit by 3, 5 and 4 degrees.
    expect(tellingRepetition([peak(13), peak(-11), peak(14)], limits)).toBe(1);
  });

  it('picks the one closest to its limit where all are within', () => {
    expect(tellingRepetition([unmeasured, peak(2), peak(-1), peak(1)], limits)).toBe(2);
  });

  it('goes by the verdict before the angle, and passes over what does not count', () => {
    const sure = kneeJudged({
      verdict: 'out',
      worst: { value: 12, band: 1, sample: 0, timeMs: 0 },
      direction: 'inward',
    });
    const wide = kneeJudged({
      verdict: 'cant-tell',
      worst: { value: 14, band: 9, sample: 0, timeMs: 0 },
      direction: 'inward',
    });
    expect(tellingRepetition([wide, sure, peak(3)], limits)).toBe(1);
    expect(tellingRepetition([wide, sure, peak(3)], limits, [null, 'stumbled', null])).toBe(0);
    expect(tellingRepetition([sure], limits, ['stumbled'])).toBe(0);
  });

  it('picks the first where nothing was measured, and none where there are no repetitions', () => {
    expect(tellingRepetition([unmeasured, unmeasured], limits)).toBe(0);
    expect(tellingRepetition([], limits)).toBeNull();
  });
});
