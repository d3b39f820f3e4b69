import { eitherWay } from './eitherWay';
import { farther } from './farther';
import type { Measure } from './measure';
import { noSource } from './noSource';
import { peakColumns } from './peakColumns';
import { sidewaysOfKnee } from './sidewaysOfKnee';
import { shareOfLeg } from './units';

/** How far the knee stands to the side of the hip, share of leg length, inward positive. */
export const hipOverKnee = {
  id: 'hip-over-knee',
  name: 'Hip over knee',
  unit: shareOfLeg,
  ways: sidewaysOfKnee.ways,
  term: {
    term: 'Hip over knee',
    meaning:
      'Where the knee was farthest sideways from the hip, seen square to the body, as a share of leg length.',
  },
  series: ({ ofLeg, towardsMidline, legLength }) =>
    ofLeg(({ knee, hip }, _, i) => (towardsMidline * (knee.x[i]! - hip.x[i]!)) / legLength),
  hasFarBand: false,
  widestBand: null,
  peak: farther,
  heldAgainst: { least: 'min', most: 'max' },
  // Half the sine of the angle.
  limits: eitherWay(
    { max: 0.3, step: 0.01, first: 0.09, source: `as far as inward: ${noSource}` },
    {
      source:
        'between a knee over the foot, where the thigh leaned by 8.8° (7.6 %), and one inward of it, with 12.6° ' +
        '(10.9 %), in a single-leg mini squat (Ageberg 2010)',
    },
  ),
  isAlwaysLimited: false,
  hasSavedCurve: false,
  columns: peakColumns('hip_over_knee', farther),
} as const satisfies Measure;
