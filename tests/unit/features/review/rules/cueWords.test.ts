import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import type { Limits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import { heardOf } from '#features/home/guide/heardOf';
import { countedRepetitions } from '#features/review/rules/countedRepetitions';
import { cueWords } from '#features/review/rules/cueWords';
import { proposeCues } from '#features/review/rules/proposeCues';
import { noRange } from '../../../../support/kneeJudgement';
import { filmPerson } from '../../../../support/syntheticPerson';

const setup = { task: 'single-leg-squat', side: 'left' } as const;
const { track } = filmPerson({
  ...setup,
  repetitions: [{ peakDeg: 2 }, { peakDeg: 24 }, { peakDeg: -24 }, { peakDeg: 3 }],
  camera: { distanceM: 12, focalPx: 6000 },
  rateHz: 25,
});
const measurement = measure(track, setup);
/** Wide enough for the view's own band. */
const kneeLimits: Limits = { 'knee-angle': { least: -12, most: 20 } };
const judgedBy = (limits: Limits) =>
  measurement.repetitions.map((repetition) => judge(repetition, measurement, limits));
const deepest = measurement.repetitions[0]!.ranges.depth.max!;
/** The first repetition is too deep for it, besides what the knee does. */
const shallow: Limits = {
  ...kneeLimits,
  depth: { most: deepest.value - 2 * deepest.band },
};

describe('cueWords(measurement, index, judgement)', () => {
  it('uses the words for the direction of the knee, or for the measure that was out of line', () => {
    const [straight, inward, outward] = judgedBy(kneeLimits);
    expect(cueWords(measurement, 0, straight!)).toBe('Just like this.');
    expect(cueWords(measurement, 1, inward!)).toBe('Knee over the middle of the foot.');
    expect(cueWords(measurement, 2, outward!)).toBe('Let the knee come in, over the second toe.');
    expect(cueWords(measurement, 0, judgedBy(shallow)[0]!)).toBe('Not quite so low.');
    expect(cueWords(measurement, 1, null)).toBe('Just like this.');
  });

  it('does not praise what was not measured', () => {
    const first = measurement.repetitions[0]!;
    const ranges = { ...first.ranges, 'knee-angle': noRange };
    const unseen = judge({ ...first, ranges }, measurement, kneeLimits);
    expect(cueWords(measurement, 0, unseen)).toBe('Knee over the middle of the foot.');
  });
});

describe('heardOf(judgement)', () => {
  it('gives the knee’s direction only where the verdict rests on the knee', () => {
    expect(heardOf(judgedBy(kneeLimits)[1]!)).toEqual({
      verdict: 'out',
      direction: 'inward',
      cue: null,
      shortCue: 'Knee out',
    });
    expect(heardOf(judgedBy(shallow)[0]!)).toEqual({
      verdict: 'out',
      direction: null,
      cue: 'Not quite so low.',
      shortCue: 'Too low',
    });
  });
});

describe('proposeCues(counted, limits)', () => {
  const proposed = (limits: Limits) =>
    proposeCues(
      countedRepetitions(
        measurement,
        judgedBy(limits),
        measurement.repetitions.map(() => null),
      ),
      limits,
    );

  it('proposes the worst, another of the usual fault and the best', () => {
    const knees = proposed(kneeLimits);
    expect(knees.map(({ role }) => role)).toContain('worst');
    expect(knees.at(-1)!.role).toBe('model');
    expect([0, 3]).toContain(knees.at(-1)!.index);
  });

  it('counts a fault of another measure as a separate fault', () => {
    // All repetitions but those of the knee are too deep: the usual fault is the depth.
    const all = proposed(shallow);
    const typical = all.find(({ role }) => role === 'typical');
    expect(judgedBy(shallow)[typical!.index]!.decidedBy).toBe('depth');
    expect(new Set(all.map(({ index }) => index)).size).toBe(all.length);
  });
});
