import { leastMeasuredShare, nearMarginDeg } from '../../scoring/judge';

/** The table's terms, each in a sentence or two. */
export const terms = [
  {
    term: 'Verdict',
    meaning:
      `In line: the peak stays more than ${nearMarginDeg}° within its limit. Near the limit: less than ` +
      `${nearMarginDeg}° from it either way. Out of line: ${nearMarginDeg}° or more beyond it. Not measured: the angle ` +
      `was seen in less than ${Math.round(leastMeasuredShare * 100)} % of the loaded time.`,
  },
  {
    term: 'Score',
    meaning: 'Alignment score: the share of the loaded time in which the knee was within its limits.',
  },
  {
    term: 'Peak angle',
    meaning:
      'Frontal-plane projection angle (FPPA) of the knee as it stands in the picture, where it came closest to its ' +
      'limit or went farthest beyond it. 0° is a straight leg; inward (towards the other knee) is the valgus ' +
      'direction, outward the varus direction.',
  },
  {
    term: 'Knee off line',
    meaning:
      'Greatest distance of the knee from the straight line between hip and ankle, as a share of leg length.',
  },
  {
    term: 'Loaded time',
    meaning: 'From leaving the seat to touching it again; in tasks without a seat, the whole repetition.',
  },
];
