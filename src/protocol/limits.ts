/** How far the knee may leave the lane before a repetition counts as out of line. */
export interface Limits {
  /** Largest knee projection angle towards the other knee, degrees, above 0. */
  kneeInwardDeg: number;
  /** Largest knee projection angle away from the other knee, degrees, above 0. */
  kneeOutwardDeg: number;
}

/** Where they come from: see limitSources. */
export const defaultLimits: Limits = { kneeInwardDeg: 10, kneeOutwardDeg: 10 };

/** Of the default limits, as half a sentence. */
export const limitSources: Record<keyof Limits, string> = {
  kneeInwardDeg: 'more is called ‘dynamic valgus’ in a study of the lateral step-down (54 people)',
  kneeOutwardDeg: 'the same angle: common practice, no source',
};

/** Limits outside this range make no sense for a knee that bends forward, degrees. */
export const limitRangeDeg = { min: 1, max: 30 };
