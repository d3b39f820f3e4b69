import { leastMeasuredShare, widestBandDeg } from '../../scoring/judge';

/** The table's terms, each in a sentence or two. */
export const terms = [
  {
    term: 'Verdict',
    meaning:
      'In line: the peak lies within its limit with its whole error band. Near the limit: the band straddles it. Out ' +
      'of line: the whole band lies beyond it. Not measured: the angle was seen in less than ' +
      `${Math.round(leastMeasuredShare * 100)} % of the loaded time, or its band is more than ±${widestBandDeg}°.`,
  },
  {
    term: 'Score',
    meaning: 'Alignment score: the share of the loaded time in which the knee was within its limits.',
  },
  {
    term: 'Peak angle',
    meaning:
      'Frontal-plane projection angle (FPPA) of the knee, seen square from the body’s front and counted from own ' +
      'standing, where it came closest to its limit or went farthest beyond it. 0° is the leg as it stands; inward ' +
      '(towards the other knee) is the valgus direction, outward the varus direction. “±” is how far the angle may be ' +
      'off either way: made to hold in nine of ten cases, tried on rendered people with known angles. It is no ' +
      'knee abduction from motion capture, no diagnosis, and tells nothing of the risk of an injury.',
  },
  {
    term: 'Knee off line',
    meaning:
      'Greatest distance of the knee from the straight line between hip and ankle, seen square to the body, as a ' +
      'share of leg length.',
  },
  {
    term: 'Knee over foot, hip over knee',
    meaning:
      'Where the knee was farthest sideways from the line of the foot, and from the hip, seen square to the body, as ' +
      'shares of leg length. No limit is set for either.',
  },
  {
    term: 'Loaded time',
    meaning: 'From leaving the seat to touching it again; in tasks without a seat, the whole repetition.',
  },
];
