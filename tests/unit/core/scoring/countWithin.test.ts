import { describe, expect, it } from 'vitest';
import { reasonCode } from '#core/measurement/curve';
import { countWithin } from '#core/scoring/countWithin';

const limits = { least: -7, most: 10 };

describe('countWithin(repetition, curve, limits)', () => {
  it('counts the loaded, measured samples and those within the limits, both limits included', () => {
    const values = Float64Array.of(99, 10, 10.01, -7, -7.01, 0, 0, 99);
    const missing = Uint8Array.of(0, 0, 0, 0, 0, 0, reasonCode('no-person'), 0);
    // Samples 1 to 6: five measured; 10, -7 and 0 within.
    expect(countWithin({ loadedFrom: 1, loadedTo: 6 }, { values, missing }, limits)).toEqual({
      measured: 5,
      within: 3,
    });
  });
});
