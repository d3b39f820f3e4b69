import { widestBandDeg } from '#core/scoring/judge';
import { leastMeasuredShare } from '#core/scoring/verdict';

/** The table's terms, each in a sentence or two. */
export const terms = [
  {
    term: 'Verdict',
    meaning:
      'In line: the peak lies within its limit with its whole error band. Near the limit: the band straddles it. Out ' +
      'of line: the whole band lies beyond it. Not measured: the angle was seen in less than ' +
      `${Math.round(leastMeasuredShare * 100)} % of the loaded time, or its band is wider than ±${widestBandDeg}°.`,
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
      '(towards the other knee) is the valgus direction, outward the varus direction. It is not ' +
      'knee abduction as motion capture gives it, no diagnosis, and says nothing about the risk of an injury.',
  },
  {
    term: '±, give or take',
    meaning:
      'How far a number may be off either way. It is made to hold the truth in nine of ten cases; in recordings with ' +
      'known angles it did so eight to ten times in ten.',
  },
  {
    term: 'At, Out, Seen',
    meaning:
      'At: when in the loaded time the peak stands, from 0 to 100 %. Out: how long the measured angle was beyond a ' +
      'limit. Seen: the share of the loaded time in which the angle could be measured.',
  },
  {
    term: 'Score of the set, with its band',
    meaning:
      'The share of the loaded time of all repetitions that count. In brackets: what it would be if every angle were ' +
      'off by its own band, to the worse and to the better.',
  },
  {
    term: 'In the set',
    meaning:
      'Whether the largest inward angle goes one way from repetition to repetition by more than its scatter explains. ' +
      'It says nothing of the cause.',
  },
  {
    term: 'Knee off line',
    meaning:
      'Greatest distance of the knee from the straight line between hip and ankle, seen square to the body, as a ' +
      'share of leg length.',
  },
  {
    term: 'Verdict by another measure',
    meaning:
      'Each measure can have limits beside the knee angle’s. The verdict then rests on whatever is gravest, and ' +
      'names it; its mark is a diamond instead of a triangle where it is not the knee angle that is out of line.',
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
