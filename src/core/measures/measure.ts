import type { Extreme, MeasureRange } from '../measurement/measureRange';
import type { SeenBody, Series } from '../measurement/seenBody';
import type { LimitEnd } from './limitEnd';

/** All that the program knows of one measure; docs/measurement.md says frame, sign and unit of each in full. */
export interface Measure {
  /** As documents name it. */
  id: string;
  /** As it heads a column. */
  name: string;
  unit: Unit;
  /** Its directions in words, below 0 and above; null where it has none. */
  ways: Record<LimitEnd, Way> | null;
  /** What its number means, in a sentence or two. */
  term: Term;
  /** Its curve over time, and the error band at each moment. */
  series: (body: SeenBody) => Series;
  /** Whether a peak's band also covers where the bands of the repetition's other moments reach. */
  hasFarBand: boolean;
  /** With a wider band than this to either side nothing is said, in its own unit; null where any band will do. */
  widestBand: number | null;
  /** Which end of its range counts as a repetition's value. */
  peak: (range: Ends) => Extreme | null;
  /** Which end of its range each limit is held against. */
  heldAgainst: Record<LimitEnd, keyof Ends>;
  limits: Record<LimitEnd, LimitChoice>;
  /** Whether it always has both limits: those that are proposed first until others are set. */
  isAlwaysLimited: boolean;
  /** Whether its curve is saved sample by sample, in documents and in the CSV of frames. */
  hasSavedCurve: boolean;
  /** Its columns in the CSV of repetitions, in order. */
  columns: readonly CsvColumn[];
}

/** How a measure is shown: what it is multiplied by, and what follows the number. */
export interface Unit {
  factor: number;
  short: string;
  long: string;
  /** In place of `long` after a 1; left out where it is the same. */
  longOne?: string;
  /** At the end of a column's name. */
  csv: string;
}

/** A direction in words: short for a table, long for a sentence. */
export interface Way {
  short: string;
  long: string;
}

export interface Term {
  term: string;
  meaning: string;
}

export type Ends = Pick<MeasureRange, 'min' | 'max'>;

/** One limit of a measure as it is asked for: from where to where, in steps, and what is proposed at first. */
export interface LimitChoice {
  min: number;
  max: number;
  step: number;
  first: number;
  /** Where the proposal comes from, as half a sentence. */
  source: string;
  /** How far healthy people went that way, where a study says so. */
  healthy?: HealthyValues;
}

/** Published values of healthy people, in the measure's own unit and sign. */
export interface HealthyValues {
  mean: number;
  /** Between people. */
  sd: number;
  /** Who they were and what they did: '30 healthy women in a single-leg squat'. */
  people: string;
  source: string;
  /** The tasks of this program that it was measured in. */
  tasks: readonly ('single-leg-squat' | 'lateral-step-down')[];
}

/** A column in the CSV of repetitions; the unit follows its name. */
export type CsvColumn =
  /** Three columns: value, band and time. With `needsVerdict` it stays empty where the measure has no verdict. */
  | { kind: 'extreme'; name: string; of: (range: Ends) => Extreme | null; needsVerdict: boolean }
  /** With `isDistance` it is given without its sign. */
  | { kind: 'limit'; name: string; end: LimitEnd; isDistance: boolean }
  /** Why there is no value. */
  | { kind: 'reason'; name: string };
