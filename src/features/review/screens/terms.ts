import { kneeAngle } from '#core/measures/kneeAngle';
import type { Term } from '#core/measures/measure';
import { measures } from '#core/measures/measures';
import { leastMeasuredShare } from '#core/scoring/verdict';

/** The table's terms, each in a sentence or two. */
export const terms: readonly Term[] = [
  {
    term: 'Verdict',
    meaning:
      'In line: the peak lies within its limit with its whole error band. Near the limit: the band straddles it. Out ' +
      'of line: the whole band lies beyond it. Not measured: the angle was seen in less than ' +
      `${Math.round(leastMeasuredShare * 100)} % of the loaded time, or its band is wider than ±${kneeAngle.widestBand}°.`,
  },
  {
    term: 'Score',
    meaning: 'Alignment score: the share of the loaded time in which the knee was within its limits.',
  },
  ...measures.map(({ term }) => term),
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
    term: 'Verdict by another measure',
    meaning:
      'Each measure can have limits beside the knee angle’s. The verdict then rests on whatever is gravest, and ' +
      'names it; its mark is a diamond instead of a triangle where it is not the knee angle that is out of line.',
  },
  {
    term: 'Loaded time',
    meaning: 'From leaving the seat to touching it again; in tasks without a seat, the whole repetition.',
  },
];
