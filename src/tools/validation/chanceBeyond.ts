import { countInLine } from '#core/chance/countInLine';
import { ninetyPercent } from '#core/view/errorBand';

/**
 * Chance that an inward peak was beyond its limit, by itself: what a set shares is not known here.
 *
 * @param peakDeg  as measured, degrees, inward positive
 * @param bandDeg  half-width that covers nine of ten normal errors, degrees, 0 or more
 * @param limitDeg  inward, degrees
 * @returns  0 to 1; 0.5 for a peak at the limit, and 0 or 1 where the band is 0
 * @throws  RangeError where a value is not a finite number or the band is below 0
 * Source:  Phi((peak - limit) / sd), with sd = band / 1.645
 */
export function chanceBeyond(peakDeg: number, bandDeg: number, limitDeg: number): number {
  const errors = { sharedSd: 0, ownSds: [bandDeg / ninetyPercent] };
  return 1 - countInLine([{ most: peakDeg }], { most: limitDeg }, errors).chancesInLine[0]!;
}
