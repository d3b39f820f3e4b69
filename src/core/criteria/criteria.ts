import { findAssessment, type AssessmentId } from '../assessments/assessments';
import type { HandMeasureId } from './handRanges';

/** Where a line's value comes from. */
export type CriterionSource =
  | { kind: 'weeks-since-surgery' }
  | { kind: 'worst-pain' }
  /** How far the knee went inward in filmed tests, of the operated leg: degrees beyond the limit of its set. */
  | { kind: 'control' }
  | { kind: 'hand'; measure: HandMeasureId }
  /** Percent of the other leg in the same test. */
  | { kind: 'symmetry'; test: AssessmentId }
  /** The test's result: of the operated leg, or of the weaker one. */
  | { kind: 'result'; test: AssessmentId; leg: 'operated' | 'weaker' };

/** A line of the card. It never adds up to anything. */
export interface Criterion {
  id: string;
  /** What is looked at, as a phrase. */
  name: string;
  /** The one measured last counts. */
  from: readonly CriterionSource[];
  line: { least: number } | { most: number };
  /** What the line is called, as a phrase. */
  lineWords: string;
  /** Where the line is published; null: common practice, no source. */
  source: string | null;
}

const rambaud = 'Rambaud 2018, Br J Sports Med 52:1437, review of 201 studies';
const grindem = 'Grindem 2016, Br J Sports Med, n = 106';
const wellsandt = 'Wellsandt 2017, J Orthop Sports Phys Ther, n = 70';

const hops = ['single-hop', 'triple-hop', 'crossover-hop'] as const;

/**
 * The least change of a numeric pain scale beyond error (knee osteoarthritis, n = 121, J Pain Res 2018, PMC5927184). The
 * rules for change use a larger one, found on a line of 10 cm, since they look at a change; here a value is held
 * against a line.
 */
export const numericPainDetectable = 1.33;

/** What is looked at before running. */
const running: readonly Criterion[] = [
  {
    id: 'weeks',
    name: 'Weeks since surgery',
    from: [{ kind: 'weeks-since-surgery' }],
    line: { least: 12 },
    lineWords: '12 or more',
    source: `${rambaud}: the median, range 5 to 39`,
  },
  {
    id: 'pain',
    name: 'Worst pain of the last 7 days, 0 to 10',
    from: [{ kind: 'worst-pain' }],
    line: { most: 1 },
    lineWords: 'below 2',
    source: `${rambaud}; which pain is our choice`,
  },
  {
    id: 'extension',
    name: 'Straightening, degrees short of the other knee',
    from: [{ kind: 'hand', measure: 'extension-loss' }],
    line: { most: 0 },
    lineWords: '0 or less',
    source: `${rambaud}: full movement`,
  },
  {
    id: 'bend',
    name: 'Bending, percent of the other knee',
    from: [{ kind: 'hand', measure: 'bend-pct' }],
    line: { least: 95 },
    lineWords: '95 or more',
    source: rambaud,
  },
  {
    id: 'effusion',
    name: 'Effusion, stroke test',
    from: [{ kind: 'result', test: 'effusion', leg: 'operated' }],
    line: { most: 1 },
    lineWords: 'none or a trace',
    source: `${rambaud}, its own proposal`,
  },
  {
    id: 'quadriceps',
    name: 'Strength of straightening, percent of the other leg',
    from: [
      { kind: 'symmetry', test: 'strength' },
      { kind: 'hand', measure: 'quadriceps-pct' },
    ],
    line: { least: 70 },
    lineWords: '70 or more',
    source: rambaud,
  },
  {
    id: 'hamstrings',
    name: 'Strength of bending, percent of the other leg',
    from: [{ kind: 'hand', measure: 'hamstrings-pct' }],
    line: { least: 70 },
    lineWords: '70 or more',
    source: rambaud,
  },
  {
    id: 'single-hop',
    name: 'Single hop, percent of the other leg',
    from: [{ kind: 'symmetry', test: 'single-hop' }],
    line: { least: 70 },
    lineWords: '70 or more',
    source: rambaud,
  },
];

/** What is looked at before sport with turns and contact. */
const sport: readonly Criterion[] = [
  {
    id: 'weeks',
    name: 'Weeks since surgery',
    from: [{ kind: 'weeks-since-surgery' }],
    line: { least: 39 },
    lineWords: '39 (9 months) or more',
    source: `${grindem}, after which waiting longer made no difference`,
  },
  {
    id: 'effusion',
    name: 'Effusion, stroke test',
    from: [{ kind: 'result', test: 'effusion', leg: 'operated' }],
    line: { most: 1 },
    lineWords: 'none or a trace',
    source: null,
  },
  {
    id: 'extension',
    name: 'Straightening, degrees short of the other knee',
    from: [{ kind: 'hand', measure: 'extension-loss' }],
    line: { most: 0 },
    lineWords: '0 or less',
    source: null,
  },
  {
    id: 'quadriceps',
    name: 'Strength of straightening, percent of the other leg',
    from: [
      { kind: 'symmetry', test: 'strength' },
      { kind: 'hand', measure: 'quadriceps-pct' },
    ],
    line: { least: 90 },
    lineWords: '90 or more',
    source: grindem,
  },
  {
    id: 'quadriceps-before',
    name: 'Strength of straightening, percent of the other leg before surgery',
    from: [{ kind: 'hand', measure: 'quadriceps-before-pct' }],
    line: { least: 90 },
    lineWords: '90 or more',
    source: wellsandt,
  },
  ...hops.map((test): Criterion => ({
    id: test,
    name: `${findAssessment(test).name}, percent of the other leg`,
    from: [{ kind: 'symmetry', test }],
    line: { least: 90 },
    lineWords: '90 or more',
    source: grindem,
  })),
  {
    id: 'timed-hop',
    name: 'Six-metre timed hop, time in percent of the other leg',
    from: [{ kind: 'symmetry', test: 'timed-hop' }],
    // A time of 111 % is 90 % of the speed.
    line: { most: 100 / 0.9 },
    lineWords: '111 or less, which is 90 of the speed',
    source: grindem,
  },
  {
    id: 'hops-before',
    name: 'Lowest of four hops, percent of the other leg before surgery',
    from: [{ kind: 'hand', measure: 'hops-before-pct' }],
    line: { least: 90 },
    lineWords: '90 or more',
    source: wellsandt,
  },
  {
    id: 'confidence',
    name: 'Questionnaire on returning to sport, 0 to 100',
    from: [{ kind: 'hand', measure: 'confidence' }],
    line: { least: 57 },
    lineWords: 'above 56',
    source: 'Gokeler 2017 (PMC5315711) and Welling 2018 (PMC6267144) held it against 56',
  },
  {
    id: 'rise',
    name: 'One-leg rise, repetitions of the weaker leg',
    from: [{ kind: 'result', test: 'one-leg-rise', leg: 'weaker' }],
    line: { least: 21 },
    lineWords: 'more than 20',
    source: null,
  },
  {
    id: 'step-down',
    name: 'Step-down by eye, points of the operated leg',
    from: [{ kind: 'result', test: 'step-down-quality', leg: 'operated' }],
    line: { most: 1 },
    lineWords: '0 or 1',
    source: null,
  },
  {
    id: 'control',
    name: 'Control: largest inward knee angle in tests without feedback, mean of the operated leg',
    from: [{ kind: 'control' }],
    line: { most: 0 },
    lineWords: 'at most the limit that the tests were judged by',
    source: 'Our choice, no source; the limit is the therapist’s',
  },
  {
    id: 'steady',
    name: 'Weeks since the knee last gave way',
    from: [{ kind: 'hand', measure: 'weeks-steady' }],
    line: { least: 8 },
    lineWords: '8 or more',
    source: null,
  },
];

export const criteriaCards = { running, sport } as const;
export type CriteriaCardId = keyof typeof criteriaCards;

/** From the lowest to the highest that a value may be. */
export interface Interval {
  low: number;
  high: number;
}

/** Of a single value: it is off by 1/√2 of the least change between two values that is beyond error. */
export function aroundValue(value: number, detectable: number): Interval {
  const reach = detectable / Math.SQRT2;
  return { low: value - reach, high: value + reach };
}

/** How a value lies to its line. There is no state beyond these, and no sum of them. */
export type CriterionState = 'met' | 'not-met' | 'within-error' | 'not-measured';

/**
 * How a value lies to its line.
 *
 * @param interval  where the true value is with 95 % certainty; null where no error is known: then the value alone
 *   decides
 * Missing: a value of null is 'not-measured'
 */
export function criterionState(
  value: number | null,
  line: Criterion['line'],
  interval: Interval | null,
): CriterionState {
  if (value === null) return 'not-measured';
  const { low, high } = interval ?? { low: value, high: value };
  if ('least' in line) {
    if (low >= line.least) return 'met';
    return high < line.least ? 'not-met' : 'within-error';
  }
  if (high <= line.most) return 'met';
  return low > line.most ? 'not-met' : 'within-error';
}
