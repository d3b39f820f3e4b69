import type { MissingReason } from './curve';

/** A value with the moment at which it stands. */
export interface Extreme {
  value: number;
  /** Index on the measurement's time base. */
  sample: number;
  timeMs: number;
  /** Half-width of the error band round the value, same unit; made to hold the truth in 9 of 10 cases. */
  band: number;
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
