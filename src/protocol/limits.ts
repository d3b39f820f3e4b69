/** How far the knee may leave the lane before a repetition counts as out of line. */
export interface Limits {
  /** Largest knee projection angle towards the other knee, degrees, above 0. */
  kneeInwardDeg: number;
  /** Largest knee projection angle away from the other knee, degrees, above 0. */
  kneeOutwardDeg: number;
}

/**
 * Inward: over 10 degrees counts as the 'dynamic valgus' category in a study of the lateral step-down (n = 54).
 * Outward: common practice, no source; set to the same angle.
 */
export const defaultLimits: Limits = { kneeInwardDeg: 10, kneeOutwardDeg: 10 };

/** Limits outside this range make no sense for a knee that bends forward, degrees. */
export const limitRangeDeg = { min: 1, max: 30 };
