import { limitEnds, type LimitEnd } from '../measures/limitEnd';
import type { EndLimits } from '../protocol/limits';
import { chanceOfRoom } from '../statistics/normalCdf';
import { ninetyPercent } from '../view/errorBand';
import { beyond } from './beyond';

/** A value with the half-width of its error band, both in one unit. */
export interface BandedValue {
  value: number;
  /** Holds nine of ten normal errors; 0 for a value that is known exactly. */
  band: number;
}

/**
 * The chance that what was held against each limit truly was within it. A value exactly at a limit is within.
 *
 * @param held  what is held against each limit; an end without a value counts as kept
 * @param limits  an end without a limit counts as kept
 * @returns  0 to 1
 * Source:   normal errors; those of the two ends count as independent, since they are read at different moments
 */
export function chanceWithin(
  held: { [End in LimitEnd]?: BandedValue | null | undefined },
  limits: EndLimits,
): number {
  return limitEnds.reduce((chance, end) => {
    const one = held[end];
    if (one === undefined || one === null) return chance;
    return chance * chanceOfRoom(-ninetyPercent * beyond(end, one.value, limits), one.band);
  }, 1);
}
