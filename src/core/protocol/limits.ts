import { measureIds, type MeasureId } from '../measures/measures';

/** How far a repetition may go before it counts as out of line. */
export interface Limits {
  /** Largest knee projection angle towards the other knee, degrees, above 0. */
  kneeInwardDeg: number;
  /** Largest knee projection angle away from the other knee, degrees, above 0. */
  kneeOutwardDeg: number;
  /** Limits of other measures; left out where none is set. */
  others?: MeasureLimits | undefined;
}

/** In each measure's own unit and sign (docs/measurement.md); an end without a limit is left out. */
export type MeasureLimits = { [Id in MeasureId]?: EndLimits | undefined };
/** The least and the most that a measure may come to. */
export type EndLimits = { [End in LimitEnd]?: number | undefined };
export const limitEnds = ['least', 'most'] as const;
export type LimitEnd = (typeof limitEnds)[number];

/** The other measures that have a limit, either way. */
export function limitedMeasures({ others }: Limits): MeasureId[] {
  return measureIds.filter((id) => limitEnds.some((end) => others?.[id]?.[end] !== undefined));
}

/** Where they come from: see limitSources. No other measure has a limit by default. */
export const defaultLimits: Limits = { kneeInwardDeg: 10, kneeOutwardDeg: 10 };

/** Of the default limits, as half a sentence. */
export const limitSources: Record<'kneeInwardDeg' | 'kneeOutwardDeg', string> = {
  kneeInwardDeg: 'more is called ‘dynamic valgus’ in a study of the lateral step-down (54 people)',
  kneeOutwardDeg: 'the same angle: common practice, no source',
};

/** Limits outside this range make no sense for a knee that bends forward, degrees. */
export const limitRangeDeg = { min: 1, max: 30 };

/** One limit of a measure as it is asked for: from where to where, in steps, and what is proposed at first. */
export interface LimitChoice {
  min: number;
  max: number;
  step: number;
  /** Proposed when a limit is wanted; none is in force before. */
  first: number;
  /** Where the proposal comes from, as half a sentence. */
  source: string;
}

/** Both directions of a measure alike. */
function eitherWay(choice: Omit<LimitChoice, 'min'>, mostSource = choice.source): Choices {
  const { max, step, first, source } = choice;
  return {
    least: { min: -max, max: -step, step, first: -first, source },
    most: { min: step, max, step, first, source: mostSource },
  };
}

type Choices = Record<LimitEnd, LimitChoice>;

const noSource = 'common practice, no source';
const leaning = { max: 0.3, step: 0.01, first: 0.09 };
const bent = { min: 0.02, max: 0.6, step: 0.01 };

/** What can be asked of each measure; angles in degrees, the rest as shares. */
export const limitChoices: Record<MeasureId, Choices> = {
  // Half the sine of half the angle.
  'knee-off-line': eitherWay({
    ...{ max: 0.15, step: 0.01, first: 0.04 },
    source:
      'as far as a knee angle of 10° puts it off a stretched leg whose thigh and shank are of one length',
  }),
  // Foot breadth .055 of body height, leg .491: Drillis & Contini, from memory.
  'knee-over-foot': eitherWay(
    { max: 0.2, step: 0.01, first: 0.06, source: 'as far as inward: common practice, no source' },
    'half a foot’s breadth, its inner border, beyond which a rating of the step-down gives 2 points (Piva 2006; breadth by Drillis & Contini, from memory)',
  ),
  // Half the sine of the angle.
  'hip-over-knee': eitherWay({
    ...leaning,
    source: `as far as a thigh that leans by 10° puts it: ${noSource}`,
  }),
  'pelvic-drop': eitherWay({ max: 20, step: 1, first: 5, source: noSource }),
  'trunk-lean': eitherWay({ max: 30, step: 1, first: 10, source: noSource }),
  'pelvis-place': {
    least: { min: 0, max: 1.5, step: 0.05, first: 0.5, source: `the middle between the feet: ${noSource}` },
    most: { min: 0, max: 1.5, step: 0.05, first: 1, source: `over the working foot: ${noSource}` },
  },
  // One less the cosine of half the knee's angle.
  depth: {
    least: {
      ...bent,
      first: 0.08,
      source: 'a knee bent by 45°, thigh and shank leaning alike; no published value',
    },
    most: {
      ...bent,
      first: 0.29,
      source: 'a knee bent by 90°, thigh and shank leaning alike; no published value',
    },
  },
};

/**
 * Limits with one of another measure set, moved or, with null, taken away.
 *
 * A value is brought into its range and kept on its side of the opposite limit.
 *
 * @param value  in the measure's own unit and sign
 */
export function withLimit(limits: Limits, measure: MeasureId, end: LimitEnd, value: number | null): Limits {
  const { others = {}, ...knee } = limits;
  const { [measure]: before = {}, ...rest } = others;
  const { [end]: _, ...opposite } = before;
  const ends = value === null ? opposite : { ...opposite, [end]: fitting(measure, end, value, before) };
  const all = Object.keys(ends).length === 0 ? rest : { ...rest, [measure]: ends };
  return Object.keys(all).length === 0 ? knee : { ...knee, others: all };
}

function fitting(measure: MeasureId, end: LimitEnd, value: number, { least, most }: EndLimits): number {
  const { min, max } = limitChoices[measure][end];
  const within = Math.min(max, Math.max(min, value));
  return end === 'least' ? Math.min(within, most ?? within) : Math.max(within, least ?? within);
}
