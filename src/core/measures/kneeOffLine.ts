import { frontalKneeDeviation } from '../view/frontalKneeAngle';
import { eitherWay } from './eitherWay';
import { farther } from './farther';
import type { Measure } from './measure';
import { peakColumns } from './peakColumns';
import { sidewaysOfKnee } from './sidewaysOfKnee';
import { shareOfLeg } from './units';

/** Wider than of the knee angle where the yaw is firm, since quiet standing is not subtracted (docs/view.md). */
const conformalShares = { firm: 1.28, loose: 1.64 };

/** Knee off the line hip to ankle in the frontal plane, share of leg length, inward positive. */
export const kneeOffLine = {
  id: 'knee-off-line',
  name: 'Knee off line',
  unit: shareOfLeg,
  ...sidewaysOfKnee,
  term: {
    term: 'Knee off line',
    meaning:
      'Greatest distance of the knee from the straight line between hip and ankle, seen square to the body, as a ' +
      'share of leg length.',
  },
  series: ({ ofLeg }) => ofLeg(frontalKneeDeviation, conformalShares),
  hasFarBand: false,
  widestBand: null,
  peak: farther,
  heldAgainst: { least: 'min', most: 'max' },
  // Half the sine of half the angle.
  limits: eitherWay({
    max: 0.15,
    step: 0.01,
    first: 0.04,
    source:
      'as far as a knee angle of 10° puts it off a stretched leg whose thigh and shank are of one length',
  }),
  isAlwaysLimited: false,
  hasSavedCurve: true,
  columns: peakColumns('knee_off_line', farther),
} as const satisfies Measure;
