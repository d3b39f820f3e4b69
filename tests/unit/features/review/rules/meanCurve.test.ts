import { describe, expect, it } from 'vitest';
import { blankCurve } from '#core/measurement/curve';
import { mapMeasures } from '#core/measures/measures';
import { cycleCurve } from '#features/review/rules/cycleCurve';
import { meanCurve } from '#features/review/rules/meanCurve';

describe('cycleCurve(measurement, repetition)', () => {
  it('maps a repetition to 0 to 100 %, interpolating linearly between samples', () => {
    const kneeCurve = blankCurve(6);
    kneeCurve.values.set([9, 2, 4, 8, 6, 9]);
    const curve = cycleCurve({ curves: mapMeasures(() => kneeCurve) }, { loadedFrom: 1, loadedTo: 4 });
    expect(curve).toHaveLength(101);
    // Half of three steps is 1.5: between 4 and 8.
    expect([curve[0], curve[50], curve[100]]).toEqual([2, 6, 6]);
  });

  it('has no value where a sample next to a point is missing', () => {
    const kneeCurve = blankCurve(3);
    kneeCurve.values.set([1, 0, 3]);
    kneeCurve.missing[1] = 2;
    const curve = cycleCurve({ curves: mapMeasures(() => kneeCurve) }, { loadedFrom: 0, loadedTo: 2 });
    expect([curve[0], curve[25], curve[50], curve[100]]).toEqual([1, null, null, 3]);
  });
});

describe('meanCurve(curves)', () => {
  it('is mean and sample standard deviation at each point, of those measured there', () => {
    const [start, end] = meanCurve([
      [2, 1],
      [4, null],
      [9, 3],
    ]);
    // Mean 5; deviations -3, -1, 4: sqrt((9 + 1 + 16) / 2) = 3.606.
    expect(start).toEqual({ pct: 0, mean: 5, sd: expect.closeTo(3.606, 3), count: 3 });
    expect(end).toBeNull();
  });

  it('is empty without repetitions', () => {
    expect(meanCurve([])).toEqual([]);
  });
});
