import { describe, expect, it } from 'vitest';
import { bandRatios } from '#tools/validation/bandRatios';
import { comparedRepetition } from './handMade';

describe('bandRatios(clips)', () => {
  it('is the error over the half-width, either way, of each peak that has a band', () => {
    const repetitions = [
      comparedRepetition({ truePeakDeg: 10, measuredPeakDeg: 13, bandDeg: 4 }),
      comparedRepetition({ truePeakDeg: 10, measuredPeakDeg: 4, bandDeg: 5 }),
      comparedRepetition({ measuredPeakDeg: null, bandDeg: 5 }),
      comparedRepetition({ bandDeg: null }),
    ];
    expect(bandRatios([{ repetitions }, { repetitions: repetitions.slice(0, 1) }])).toEqual([
      0.75, 1.2, 0.75,
    ]);
  });
});
