import { handRanges, type HandMeasureId } from './handRanges';

/** What of a knee after surgery is measured elsewhere and entered by hand. */
export interface HandMeasure {
  id: HandMeasureId;
  /** What is entered, as a phrase. */
  name: string;
  unit: 'deg' | '%' | 'weeks' | 'points';
  min: number;
  max: number;
}

/** Percent is of the other leg now, unless it says otherwise. */
export const handMeasures: readonly [HandMeasure, ...HandMeasure[]] = [
  {
    id: 'extension-loss',
    name: 'Straightening, short of the other knee',
    unit: 'deg',
    ...handRanges['extension-loss'],
  },
  { id: 'bend-pct', name: 'Bending, of the other knee', unit: '%', ...handRanges['bend-pct'] },
  {
    id: 'quadriceps-pct',
    name: 'Strength of straightening, of the other leg',
    unit: '%',
    ...handRanges['quadriceps-pct'],
  },
  {
    id: 'quadriceps-before-pct',
    name: 'Strength of straightening, of the other leg before surgery',
    unit: '%',
    ...handRanges['quadriceps-before-pct'],
  },
  {
    id: 'hamstrings-pct',
    name: 'Strength of bending, of the other leg',
    unit: '%',
    ...handRanges['hamstrings-pct'],
  },
  {
    id: 'hops-before-pct',
    name: 'Lowest of four hops, of the other leg before surgery',
    unit: '%',
    ...handRanges['hops-before-pct'],
  },
  {
    id: 'confidence',
    name: 'Questionnaire on returning to sport, its score',
    unit: 'points',
    ...handRanges['confidence'],
  },
  { id: 'weeks-steady', name: 'Since the knee last gave way', unit: 'weeks', ...handRanges['weeks-steady'] },
];
