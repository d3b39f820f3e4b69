import type { MissingReason } from './curve';

/** A value with the moment at which it stands. */
export interface Extreme {
  value: number;
  /** Index on the measurement's time base. */
  sample: number;
  timeMs: number;
  /** Half-width of the error band round the value, same unit; made to hold the truth in 9 of 10 cases. */
  band: number;
  /**
   * The part of the band that is the repetition's own, 0 to band: band² = shared² + own². The rest is alike in the
   * whole set. Left out in recordings measured before version 6, as is the next.
   */
  ownBand?: number | undefined;
  /** Whether it lies at the edge of what was seen, so that the true extreme may lie beyond. */
  isAtEdge?: boolean | undefined;
}

/** How far a measure went either way while the working leg bore load, in its own unit and sign. */
export interface MeasureRange {
  /** Null where none was measured. */
  min: Extreme | null;
  max: Extreme | null;
  /** Share of the loaded time in which it could be measured, 0 to 1. */
  measuredShare: number;
  /** The reason behind most of what is missing; null where nothing is. */
  mainReason: MissingReason | null;
}

/**
 * The part of an extreme's band that is alike in the whole set, in its own unit. Where it is not known what the
 * repetition has by itself, all of it is.
 */
export function sharedBand({ band, ownBand = 0 }: Pick<Extreme, 'band' | 'ownBand'>): number {
  return Math.sqrt(Math.max(0, band ** 2 - ownBand ** 2));
}
