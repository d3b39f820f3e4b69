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

  it('picks the first where nothing was measured, and none where there are no repetitions', () => {
    expect(tellingRepetition([unmeasured, unmeasured], limits)).toBe(0);
    expect(tellingRepetition([], limits)).toBeNull();
  });
});
