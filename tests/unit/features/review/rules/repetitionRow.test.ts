import { describe, expect, it } from 'vitest';
import { measure } from '#core/measurement/measure';
import { defaultLimits } from '#core/protocol/limits';
import { judge } from '#core/scoring/judge';
import { buildSetGlance } from '#features/review/rules/buildSetGlance';
import { countedRepetitions } from '#features/review/rules/countedRepetitions';
import { proposeCues } from '#features/review/rules/proposeCues';
import { filteredRows, repetitionRows, sortedRows } from '#features/review/rules/repetitionRow';
import { filmPerson } from '../../../../support/syntheticPerson';

const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;
const { track } = filmPerson({
  ...setup,
  repetitions: [{ peakDeg: 2 }, { peakDeg: 24 }, { peakDeg: 17 }, { peakDeg: 19 }],
  camera: { distanceM: 12, focalPx: 6000 },
  rateHz: 25,
});
const measurement = measure(track, setup);
const judgements = measurement.repetitions.map((repetition) => judge(repetition, measurement, defaultLimits));
const none = judgements.map(() => null);
const handMade = judgements.map(() => false);
const rows = repetitionRows(measurement, judgements, defaultLimits, {
  excluded: none,
  handMade,
  observed: {},
});

describe('repetitionRows(measurement, judgements, limits, marks)', () => {
  it('reports when the worst moment is, and how long the knee was out of its limits', () => {
    expect(rows).toHaveLength(4);
    for (const { worstAtPct, outOfLimitsMs, measuredPct } of rows) {
      expect(worstAtPct).toBeGreaterThanOrEqual(0);
      expect(worstAtPct).toBeLessThanOrEqual(100);
      expect(outOfLimitsMs).toBeGreaterThanOrEqual(0);
      expect(measuredPct).toBeGreaterThan(30);
    }
    expect(rows[1]!.outOfLimitsMs).toBeGreaterThan(rows[0]!.outOfLimitsMs!);
  });
});

describe('sortedRows(rows, key, direction)', () => {
  const order = (...args: Parameters<typeof sortedRows>) => sortedRows(...args).map(({ number }) => number);

  it('sorts by any measure, either way, without changing its input', () => {
    expect(order(rows, 'knee-angle', 'descending')).toEqual([2, 4, 3, 1]);
    expect(order(rows, 'knee-angle', 'ascending')).toEqual([1, 3, 4, 2]);
    expect(order(rows, 'number', 'descending')).toEqual([4, 3, 2, 1]);
    expect(rows.map(({ number }) => number)).toEqual([1, 2, 3, 4]);
  });

  it('puts what was not measured last either way', () => {
    const [first, ...others] = rows;
    const withGap = [{ ...first!, outOfLimitsMs: null }, ...others];
    expect(order(withGap, 'out-of-limits', 'ascending').at(-1)).toBe(1);
    expect(order(withGap, 'out-of-limits', 'descending').at(-1)).toBe(1);
  });
});

describe('filteredRows(rows, filter)', () => {
  it('shows excluded ones under all and under excluded only', () => {
    const marked = rows.map((row, index) => (index === 1 ? { ...row, excluded: 'A trial.' } : row));
    expect(filteredRows(marked, 'all')).toHaveLength(4);
    expect(filteredRows(marked, 'excluded').map(({ number }) => number)).toEqual([2]);
    expect(filteredRows(marked, 'out').some(({ number }) => number === 2)).toBe(false);
  });
});

describe('proposeCues(counted, limits)', () => {
  it('proposes the worst, the usual fault and the best, each once', () => {
    const proposed = proposeCues(countedRepetitions(measurement, judgements, none), defaultLimits);
    expect(proposed.map(({ role }) => role)).toEqual(['worst', 'typical', 'model']);
    expect(proposed[0]).toEqual({ index: 1, role: 'worst' });
    expect([2, 3]).toContain(proposed[1]!.index);
    expect(proposed[2]).toEqual({ index: 0, role: 'model' });
  });

  it('leaves excluded ones out', () => {
    const excluded = [null, 'A trial.', null, null];
    const proposed = proposeCues(countedRepetitions(measurement, judgements, excluded), defaultLimits);
    expect(proposed.map(({ index }) => index)).not.toContain(1);
  });

  it('takes the fault that is expected most often, also where no verdict is sure of it', () => {
    // Expected out of the limits of 10: inward .5 + .5 + .5, outward 1.
    const one = (index: number, value: number, band: number) => {
      const extreme = { value, band, sample: index, timeMs: 1000 * index };
      const repetition = measurement.repetitions[index]!;
      const ranges = {
        ...repetition.ranges,
        'knee-angle': { ...repetition.ranges['knee-angle'], min: extreme, max: extreme },
      };
      const judged = { ...repetition, ranges };
      return { index, repetition: judged, judgement: judge(judged, measurement, defaultLimits) };
    };
    const counted = [one(0, -14, 1), one(1, 10, 8), one(2, 10, 8), one(3, 10, 8)];
    const typical = proposeCues(counted, defaultLimits).find(({ role }) => role === 'typical');
    expect(counted[typical!.index]!.judgement).toMatchObject({
      verdict: 'cant-tell',
      decidedBy: 'knee-angle',
    });
  });

  it('proposes nothing where nothing was measured', () => {
    expect(proposeCues([], defaultLimits)).toEqual([]);
  });
});

describe('buildSetGlance(measurement, judgements, excluded, limits)', () => {
  it('includes only what counts, with the number in line as a range', () => {
    const glance = buildSetGlance(measurement, judgements, [null, 'A trial.', null, null], defaultLimits);
    expect(glance).toMatchObject({ done: 3, excluded: 1 });
    const { low, high, mode, chancesInLine } = glance.inLine!;
    expect(chancesInLine).toHaveLength(3);
    expect([low, mode, high]).toEqual([low, mode, high].sort((a, b) => a - b));
    expect(glance.goodRun).toBeLessThanOrEqual(high);
    // 17 and 19 degrees inward, and one that is fine.
    expect(glance.lost.flatMap(({ repetitions }) => repetitions.map(({ number }) => number))).toEqual([3, 4]);
    expect(glance.lost[0]).toMatchObject({ measure: 'knee-angle', end: 'most' });
    expect(glance.worst!.number).toBe(4);
    expect(glance.medianDeg).toBeGreaterThan(10);
    expect(glance.medianDeg).toBeLessThan(glance.worst!.extreme.value);
    expect(glance.timeInLinePct).toBeGreaterThan(0);
    expect(glance.timeInLinePct).toBeLessThan(100);
    expect(glance.tempo.map(({ name }) => name)).toEqual(['rise', 'top', 'lowering']);
  });

  it('says that nothing was measured where nothing counts', () => {
    const all = judgements.map(() => 'A trial.');
    const glance = buildSetGlance(measurement, judgements, all, defaultLimits);
    expect(glance).toMatchObject({ done: 0, inLine: null, goodRun: 0, trend: null, bend: null });
    expect(glance).toMatchObject({ lost: [], worst: null, medianDeg: null, timeInLinePct: null });
  });
});
