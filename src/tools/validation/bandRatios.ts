import type { ComparedClip, RepetitionComparison } from './compareClip';

/** Measures whose bands are held against a truth. */
export const bandedMeasures = ['knee-angle', 'knee-off-line'] as const;
export type BandedMeasure = (typeof bandedMeasures)[number];

/** Absolute error over half-width of every peak that has a band; 1 or less = the truth lies within. */
export function bandRatios(
  clips: readonly Pick<ComparedClip, 'repetitions'>[],
  measure: BandedMeasure = 'knee-angle',
): number[] {
  return clips.flatMap(({ repetitions }) =>
    repetitions.flatMap((repetition) => {
      const peak = peakOf[measure](repetition);
      return peak === null ? [] : [Math.abs(peak.measured - peak.truth) / peak.band];
    }),
  );
}

const peakOf: Record<
  BandedMeasure,
  (repetition: RepetitionComparison) => RepetitionComparison['kneeOffLine']
> = {
  'knee-angle': ({ measuredPeakDeg: measured, truePeakDeg: truth, bandDeg: band }) =>
    measured === null || band === null ? null : { truth, measured, band },
  'knee-off-line': ({ kneeOffLine }) => kneeOffLine,
};
