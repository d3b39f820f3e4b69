import { describe, expect, it } from 'vitest';
import type { Limits } from '#core/protocol/limits';
import { beyondLimit } from '#core/scoring/beyondLimit';
import { decidingMeasure, decidingWay, kneeDirection, tellingMeasure } from '#core/scoring/deciding';
import { beyondShare, type MeasureJudgement } from '#core/scoring/judgeMeasure';
import { ofKnee } from '../../../support/kneeJudgement';

const at = (value: number) => ({ value, band: 1, sample: 0, timeMs: 0 });
const knee = ofKnee({ verdict: 'out', direction: 'outward', worst: at(-14) });
const unseenKnee = ofKnee({ verdict: 'not-measured', reason: 'joint-unseen' });
const depth: MeasureJudgement = { ...ofKnee({ verdict: 'out', worst: at(0.35) }), measure: 'depth' };
const unseenDepth: MeasureJudgement = { ...unseenKnee, measure: 'depth' };
const limits: Limits = { 'knee-angle': { least: -7, most: 10 }, depth: { most: 0.2 } };

describe('decidingMeasure and tellingMeasure(judgement)', () => {
  it('are the measure that the verdict rests on', () => {
    const judgement = { decidedBy: 'depth', measures: [knee, depth] } as const;
    expect(decidingMeasure({ ...judgement, measures: [...judgement.measures] })).toBe(depth);
    expect(tellingMeasure({ ...judgement, measures: [...judgement.measures] })).toBe(depth);
  });

  it('differ where it is missing: the knee angle then says most, wherever it stands', () => {
    for (const measures of [
      [knee, unseenDepth],
      [unseenDepth, knee],
    ]) {
      expect(decidingMeasure({ decidedBy: 'depth', measures })).toBe(unseenDepth);
      expect(tellingMeasure({ decidedBy: 'depth', measures })).toBe(knee);
    }
  });
});

describe('kneeDirection and decidingWay(judgement)', () => {
  it('are the way in which the knee angle came closest to its limit', () => {
    const inward = ofKnee({ verdict: 'in', direction: 'inward', worst: at(4) });
    expect(kneeDirection({ measures: [depth, knee] })).toBe('outward');
    expect(kneeDirection({ measures: [inward] })).toBe('inward');
    expect(decidingWay({ decidedBy: 'knee-angle', measures: [knee] })).toBe('outward');
  });

  it('are not known where the knee angle was not measured, and no way where another measure decides', () => {
    expect(kneeDirection({ measures: [unseenKnee] })).toBeNull();
    expect(decidingWay({ decidedBy: 'knee-angle', measures: [unseenKnee] })).toBeNull();
    expect(decidingWay({ decidedBy: 'depth', measures: [knee, depth] })).toBeNull();
  });
});

describe('beyondLimit and beyondShare', () => {
  const judged = (decidedBy: 'knee-angle' | 'depth', measures: MeasureJudgement[]) => ({
    verdict: 'out' as const,
    chanceInLine: 0,
    reason: null,
    alignmentScorePct: null,
    decidedBy,
    measures,
  });

  it('are counted in the limits that are proposed at first', () => {
    // 14 outward is 7 beyond the limit of 7; the proposed one is 10. A depth of .35 is .15 beyond .2; proposed is .29.
    expect(beyondLimit(judged('knee-angle', [knee]), limits)).toBeCloseTo(0.7, 12);
    expect(beyondLimit(judged('depth', [knee, depth]), limits)).toBeCloseTo(0.15 / 0.29, 12);
    const within = { ...depth, extreme: at(0.055) };
    expect(beyondShare(within, limits)).toBeCloseTo(-0.5, 12);
  });

  it('are no number where nothing was measured, or nothing has a limit', () => {
    expect(beyondLimit(judged('knee-angle', [unseenKnee]), limits)).toBeNull();
    expect(beyondShare(unseenDepth, limits)).toBe(-Infinity);
    expect(beyondShare(depth, { 'knee-angle': limits['knee-angle'] })).toBe(-Infinity);
  });
});
