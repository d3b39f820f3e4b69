import type { ComparedClip } from './compareClip';

/** Absolute error over half-width of every peak that has a band; 1 or less = the truth lies within. */
export function bandRatios(clips: readonly Pick<ComparedClip, 'repetitions'>[]): number[] {
  return clips.flatMap(({ repetitions }) =>
    repetitions.flatMap(({ measuredPeakDeg, truePeakDeg, bandDeg }) =>
      measuredPeakDeg === null || bandDeg === null ? [] : [Math.abs(measuredPeakDeg - truePeakDeg) / bandDeg],
    ),
  );
}
