import { describe, expect, it } from 'vitest';
import { findRange, scaleToExcursion } from '#core/segmentation/scaleToExcursion';

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

describe('scaleToExcursion(task, movement, counts)', () => {
  it('scales by the samples that count alone, and scales all', () => {
    const walkedIn = Float64Array.of(...[9, 7, 5], ...ramp);
    const counts = Uint8Array.from(walkedIn, (_, i) => (i < 3 ? 0 : 1));
    const scaled = scaleToExcursion({ shape: 'rise' }, walkedIn, counts)!;
    expect([...scaled.subarray(3)]).toEqual([...scaleToExcursion({ shape: 'rise' }, ramp)!]);
    // From rest at 0.52, 0.36 to the far end.
    expect(scaled[0]).toBeCloseTo((9 - 0.52) / 0.36, 12);
    expect(scaleToExcursion({ shape: 'rise' }, walkedIn)).not.toEqual(scaled);
  });
});

describe('findRange(turned, legLength, quantile)', () => {
  /** A leg of 100 px: back within 2 px of rest, and nothing below 5 px is a movement. */
  const legLength = 100;
  const rangeOf = (turned: number[], most = Math.max(...turned)) =>
    findRange(turned, legLength, (share) => (share < 0.5 ? 0 : most));

  it('takes the far end from movements that return, not from one that stays away', () => {
    // Peaks of 40 and 60 return; three quarters of the way between the lesser and the greater is 55.
    expect(rangeOf([0, 40, 0, 60, 0, 300, 300])).toEqual({ rest: 0, far: 55 });
    expect(rangeOf([300, 300, 0, 40, 0, 60, 0])).toEqual({ rest: 0, far: 55 });
    // Where none returns, from all samples.
    expect(rangeOf([0, 0, 300, 300])).toEqual({ rest: 0, far: 300 });
  });

  it('counts one as returned within 2 px of rest', () => {
    expect(rangeOf([0, 40, 1.5, 60, 1.5])).toEqual({ rest: 0, far: 55 });
    // From 2.5 it has not come back: one movement, up to 60.
    expect(rangeOf([0, 40, 2.5, 60, 0])).toEqual({ rest: 0, far: 60 });
  });

  it('leaves out what is smaller than 5 px, and finds nothing where all is', () => {
    expect(rangeOf([0, 4.9, 0, 60, 0])).toEqual({ rest: 0, far: 60 });
    expect(rangeOf([0, 4.9, 0])).toBeNull();
    expect(rangeOf([0, 5, 0])).toEqual({ rest: 0, far: 5 });
  });
});
