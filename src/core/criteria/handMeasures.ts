/** What of a knee after surgery is measured elsewhere and entered by hand. */
export interface HandMeasure {
  id: string;
  /** What is entered, as a phrase. */
  name: string;
  unit: 'deg' | '%' | 'weeks' | 'points';
  min: number;
  max: number;
  /** A value may be off by this much; null where no error is known. */
  error: { detectable: number; source: string } | null;
}

/** Percent is of the other leg now, unless it says otherwise. */
export const handMeasures = [
  {
    id: 'extension-loss',
    name: 'Straightening, short of the other knee',
    unit: 'deg',
    min: -20,
    max: 90,
    error: null,
  },
  { id: 'bend-pct', name: 'Bending, of the other knee', unit: '%', min: 0, max: 150, error: null },
  {
    id: 'quadriceps-pct',
    name: 'Strength of straightening, of the other leg',
    unit: '%',
    min: 0,
    max: 300,
    error: null,
  },
  {
    id: 'quadriceps-before-pct',
    name: 'Strength of straightening, of the other leg before surgery',
    unit: '%',
    min: 0,
    max: 300,
    error: null,
  },
  {
    id: 'hamstrings-pct',
    name: 'Strength of bending, of the other leg',
    unit: '%',
    min: 0,
    max: 300,
    error: null,
  },
  {
    id: 'hops-before-pct',
    name: 'Lowest of four hops, of the other leg before surgery',
    unit: '%',
    min: 0,
    max: 300,
    error: null,
  },
  {
    id: 'confidence',
    name: 'Questionnaire on returning to sport, its score',
    unit: 'points',
    min: 0,
    max: 100,
    error: null,
  },
  { id: 'weeks-steady', name: 'Since the knee last gave way', unit: 'weeks', min: 0, max: 1000, error: null },
] as const satisfies readonly HandMeasure[];

export type HandMeasureId = (typeof handMeasures)[number]['id'];

export const handMeasureIds = handMeasures.map(({ id }) => id) as [HandMeasureId, ...HandMeasureId[]];
