/** What an observer saw in a lateral step-down of five repetitions from a step of 20 cm. */
export interface StepDownObservation {
  /** An arm was taken away from the body to keep balance. */
  armsUsed: boolean;
  /** The trunk leaned to either side. */
  trunkLeaned: boolean;
  /** One side of the pelvis turned or rose against the other. */
  pelvisLeftLevel: boolean;
  /** How far inward the knee went: to the second toe at most, beyond it, or beyond the foot's inner border. */
  kneeInward: 'none' | 'beyond-second-toe' | 'beyond-inner-border';
  /** The stance was unsteady, or the other foot was put down. */
  unsteady: boolean;
}

export interface StepDownRating {
  /** 0 to 6, 0 = nothing seen. */
  points: number;
  quality: 'good' | 'medium' | 'poor';
}

const kneePoints = { none: 0, 'beyond-second-toe': 1, 'beyond-inner-border': 2 } as const;

/**
 * Visual rating of a lateral step-down, as an observer scores it: a sum of points, never read off a video here.
 *
 * @returns  0 to 1 points good, 2 to 3 medium, 4 and more poor
 * Source:   Piva et al. 2006 (table 3 of Manske & Davies 2016, PMC5095938; agreement between raters kappa .67, later .40 to .81)
 */
export function stepDownRating(seen: StepDownObservation): StepDownRating {
  const single = [seen.armsUsed, seen.trunkLeaned, seen.pelvisLeftLevel, seen.unsteady].filter(
    Boolean,
  ).length;
  const points = single + kneePoints[seen.kneeInward];
  return { points, quality: stepDownQuality(points) };
}

/** The class of a sum of points, 0 to 6. */
export function stepDownQuality(points: number): StepDownRating['quality'] {
  return points <= 1 ? 'good' : points <= 3 ? 'medium' : 'poor';
}
