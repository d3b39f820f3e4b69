import { describe, expect, it } from 'vitest';
import { butterworthLowPass } from '#core/signal/butterworthLowPass';
import { filterZeroPhase } from '#core/signal/filterZeroPhase';
import { smoothRuns } from '#core/signal/smoothRuns';

const filter = butterworthLowPass(6, 30, 2);
const wave = (from: number, count: number) =>
  Float64Array.from({ length: count }, (_, i) => 40 + 9 * Math.sin(1.1 * (from + i)) + i);

describe('smoothRuns(signal, filter)', () => {
  it('filters each run by itself, so that nothing leaks across a hole', () => {
    const [first, second] = [wave(0, 14), wave(30, 21)];
    const smooth = smoothRuns(
      {
        values: Float64Array.of(...first, 0, 0, 0, ...second),
        missing: Uint8Array.of(...first.map(() => 0), 4, 4, 5, ...second.map(() => 0)),
      },
      filter,
    );
    expect(smooth.values.subarray(0, 14)).toEqual(filterZeroPhase(first, filter));
    expect(Array.from(smooth.values.subarray(14, 17))).toEqual([0, 0, 0]);
    expect(smooth.values.subarray(17)).toEqual(filterZeroPhase(second, filter));
    expect(Array.from(smooth.missing.subarray(13, 18))).toEqual([0, 4, 4, 5, 0]);
  });

  it('returns a run too short to be filtered unchanged', () => {
    const values = Float64Array.of(0, 3, 8, 2, 0);
    const smooth = smoothRuns({ values, missing: Uint8Array.of(1, 0, 0, 0, 1) }, filter);
    expect(smooth.values).toEqual(values);
  });

  it('returns nothing for nothing', () => {
    const smooth = smoothRuns({ values: new Float64Array(), missing: new Uint8Array() }, filter);
    expect(smooth.values).toHaveLength(0);
  });
});
