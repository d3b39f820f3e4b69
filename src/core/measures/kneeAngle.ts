import { clamp } from '../clamp';
import { frontalKneeAngleDeg, medianWhere, thighShare } from '../view/frontalKneeAngle';
import { farther } from './farther';
import type { Measure } from './measure';
import { sidewaysOfKnee } from './sidewaysOfKnee';
import { degrees } from './units';

/** Below this share of its length, seen from the front, the thigh points at the camera and its direction is noise. */
export const leastThighShare = 0.5;

/** Thigh share at which the correction from own standing has faded out, where no seated posture shows it. */
const fadedShare = 0.25;

/** Limits outside this range make no sense for a knee that bends forward, degrees. */
const range = { nearest: 1, farthest: 30 };

/**
 * Knee projection angle in the body's frontal plane, from own standing, degrees, inward positive.
 *
 * The network sets hip, knee and ankle slightly off the joints' centres, differently for each person. What it reads
 * in quiet standing, where the leg is straight, is taken off; bent, the view's own calibration has already taken it
 * up, so the correction fades with the thigh's share in the frontal plane.
 */
export const kneeAngle = {
  id: 'knee-angle',
  name: 'Knee angle',
  unit: { ...degrees, long: ' degrees', longOne: ' degree' },
  ways: sidewaysOfKnee.ways,
  term: {
    term: 'Peak angle',
    meaning:
      'Frontal-plane projection angle (FPPA) of the knee, seen square from the body’s front and counted from own ' +
      'standing, where it came closest to its limit or went farthest beyond it. 0° is the leg as it stands; inward ' +
      '(towards the other knee) is the valgus direction, outward the varus direction. It is not ' +
      'knee abduction as motion capture gives it, no diagnosis, and says nothing about the risk of an injury.',
  },
  series({ leg, side, view, seenUpright, standingOffsetDeg, curve, legBand }) {
    const { frontal, working, bent } = view;
    const seenBent = bent.map((value, i) => value & working.picture.seen[i]!);
    const uprightShare = medianWhere(seenUpright, (i) => thighShare(frontal, i)) ?? 1;
    const bentShare = Math.min(
      fadedShare,
      medianWhere(seenBent, (i) => thighShare(frontal, i)) ?? fadedShare,
    );
    return {
      curve: curve(leg, (i) => {
        const share = thighShare(frontal, i);
        if (share < leastThighShare) return 'thigh-foreshortened';
        const straight = clamp((share - bentShare) / (uprightShare - bentShare), 0, 1);
        return frontalKneeAngleDeg(frontal, side, i) - standingOffsetDeg * straight;
      }),
      band: legBand(frontalKneeAngleDeg),
    };
  },
  hasFarBand: true,
  widestBand: 12,
  peak: farther,
  heldAgainst: { least: 'min', most: 'max' },
  limits: {
    least: {
      min: -range.farthest,
      max: -range.nearest,
      step: 1,
      first: -10,
      source: 'their category ‘dynamic varus’ in the same study',
    },
    most: {
      min: range.nearest,
      max: range.farthest,
      step: 1,
      first: 10,
      source:
        'the category ‘dynamic valgus’ for raters of the lateral step-down in ‘Quantitative and qualitative ' +
        'assessment of frontal plane knee motion in males and females’ (a study of 54 people), chosen by its authors, ' +
        'not derived',
      healthy: {
        mean: 8.4,
        sd: 5.1,
        people: '30 healthy women in a single-leg squat',
        source: 'Herrington 2014, Knee 21:514; by hand, at the deepest point',
        tasks: ['single-leg-squat'],
      },
    },
  },
  isAlwaysLimited: true,
  hasSavedCurve: true,
  columns: [
    { kind: 'limit', name: 'limit_inward', end: 'most', isDistance: true },
    { kind: 'limit', name: 'limit_outward', end: 'least', isDistance: true },
    { kind: 'extreme', name: 'knee_angle_largest', of: ({ max }) => max, needsVerdict: true },
    { kind: 'extreme', name: 'knee_angle_smallest', of: ({ min }) => min, needsVerdict: true },
  ],
} as const satisfies Measure;
