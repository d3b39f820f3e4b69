import { describe, expect, it } from 'vitest';
import { scaleToExcursion } from '#core/segmentation/scaleToExcursion';

/** 101 values from 0.5 to 0.9 in even steps: 5 % lie below 0.52 and above 0.88. */
const ramp = Float64Array.from({ length: 101 }, (_, i) => 0.5 + 0.004 * i);

describe('scaleToExcursion(task, movement)', () => {
  it.each(['rise', 'reach'] as const)('puts rest low for a %s', (shape) => {
    const scaled = scaleToExcursion({ shape }, ramp)!;
    // (0.7 - 0.52) / (0.88 - 0.52) = 0.5; the ends lie 0.02 / 0.36 beyond 0 and 1.
    expect(scaled[50]).toBeCloseTo(0.5, 12);
    expect(scaled[0]).toBeCloseTo(-0.02 / 0.36, 12);
    expect(scaled[100]).toBeCloseTo(1 + 0.02 / 0.36, 12);
  });

  it('puts rest high for a dip', () => {
    const scaled = scaleToExcursion({ shape: 'dip' }, ramp)!;
    expect(scaled[100]).toBeCloseTo(-0.02 / 0.36, 12);
    expect(scaled[0]).toBeCloseTo(1 + 0.02 / 0.36, 12);
  });

  it('is the same whatever the height and scale', () => {
    const other = scaleToExcursion(
      { shape: 'rise' },
      ramp.map((value) => 3 * value - 8),
    )!;
    scaleToExcursion({ shape: 'rise' }, ramp)!.forEach((value, i) => expect(other[i]).toBeCloseTo(value, 9));
  });

  it('is null where hardly anything moves, or nothing was seen', () => {
    expect(
      scaleToExcursion(
        { shape: 'dip' },
        ramp.map((value) => value / 8),
      ),
    ).toBeNull();
    expect(scaleToExcursion({ shape: 'dip' }, new Float64Array())).toBeNull();
  });
});
