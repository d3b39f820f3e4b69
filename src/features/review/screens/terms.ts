import { kneeAngle } from '#core/measures/kneeAngle';
import type { Term } from '#core/measures/measure';
import { measures } from '#core/measures/measures';
import { leastMeasuredShare } from '#core/scoring/verdict';

/** The table's terms, each in a sentence or two. */
export const terms: readonly Term[] = [
  {
    term: 'Verdict',
    meaning:
      'A side is named where the chance of it, by the error band, reaches what is set under “How sure”: with ' +
      '“probably” where more doubt is left, without it where little is. Can’t tell: neither side reaches it. Not measured: the angle was seen in less than ' +
      `${Math.round(leastMeasuredShare * 100)} % of the loaded time, or its band is wider than ±${kneeAngle.widestBand}°.`,
  },
  {
    term: 'Time in line',
    meaning:
      'The share of the loaded time in which the knee angle was within its limits. Most of that time the leg is nearly straight, so it says little.',
  },
  ...measures.map(({ term }) => term),
  {
    term: '±, give or take',
    meaning:
      'How far a number may be off either way. It is meant to hold the true value in nine of ten cases; in recordings ' +
      'with known angles it did so eight to ten times in ten.',
  },
  {
    term: 'At the deepest',
    meaning:
      'The knee angle where the knee was bent most. Published values are mostly read there, from markers and without taking ' +
      'off the own standing, so they compare with this rather than with the peak.',
  },
  {
    term: 'Peak at, Out for, Seen',
    meaning:
      'Peak at: when in the loaded time the peak occurs, from 0 to 100 %. Out for: how long the measured angle was beyond a ' +
      'limit. Seen: the share of the loaded time in which the angle could be measured.',
  },
  {
    term: 'In line: 2 to 5 of 6',
    meaning:
      'How many of the measured repetitions were in line, as far as their error bands tell: nine times in ten the true ' +
      'number should lie in this range. Most of the error is shared by the whole set, so repetitions near a limit tend to be on ' +
      'the same side of it.',
  },
  {
    term: 'Longest good run',
    meaning:
      'Repetitions one after the other of which none was probably out of line, and at least 80 % are expected to have ' +
      'been in line. Common practice, no source.',
  },
  {
    term: 'From first to last',
    meaning:
      'Whether the largest inward angle goes one way from repetition to repetition by more than its scatter explains. ' +
      'It says nothing about the cause.',
  },
  {
    term: 'Verdict by another measure',
    meaning:
      'Each measure can have limits besides the knee angle’s. The verdict then rests on the most serious one and ' +
      'names it; its mark is a diamond instead of a triangle where it is not the knee angle that is out of line. The ' +
      'strip below the plot shows each measure on its own lane.',
  },
  {
    term: 'Loaded time',
    meaning: 'From leaving the seat to touching it again; in tasks without a seat, the whole repetition.',
  },
];
