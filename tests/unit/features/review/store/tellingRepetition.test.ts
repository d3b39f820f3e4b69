import { describe, expect, it } from 'vitest';
import { tellingRepetition } from '#features/review/store/tellingRepetition';
import type { Judgement } from '#core/scoring/judge';
import { ofKnee } from '../../../../support/kneeJudgement';

const limits = { kneeInwardDeg: 10, kneeOutwardDeg: 6 };
const peak = (value: number): Judgement =>
  ({
    ...ofKnee('in-line'),
    worst: { value },
    direction: value < 0 ? 'outward' : 'inward',
  }) as Judgement;
const unmeasured = { ...ofKnee('not-measured'), worst: null, direction: null } as Judgement;

describe('tellingRepetition(judgements, limits)', () => {
  it('takes the knee that went farthest beyond its own limit, either way', () => {
    // Beyond by 3, 5 and 4 degrees.
    expect(tellingRepetition([peak(13), peak(-11), peak(14)], limits)).toBe(1);
  });

  it('takes the closest to its limit where all are within', () => {
    expect(tellingRepetition([unmeasured, peak(2), peak(-1), peak(1)], limits)).toBe(2);
  });

  it('takes the first where nothing was measured, and none where there is none', () => {
    expect(tellingRepetition([unmeasured, unmeasured], limits)).toBe(0);
    expect(tellingRepetition([], limits)).toBeNull();
  });
});
