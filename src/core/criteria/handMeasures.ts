/** What of a knee after surgery is measured elsewhere and entered by hand. */
export interface HandMeasure {
  id: string;
  /** What is entered, as a phrase. */
  name: string;
  unit: 'deg' | '%' | 'weeks' | 'points';
  min: number;
  max: number;
}

/** Percent is of the other leg now, unless it says otherwise. */
export const handMeasures = [
  {
    id: 'extension-loss',
    name: 'Straightening, short of the other knee',
    unit: 'deg',
    min: -20,
    max: 90,
  },
  { id: 'bend-pct', name: 'Bending, of the other knee', unit: '%', min: 0, max: 150 },
  {
    id: 'quadriceps-pct',
    name: 'Strength of straightening, of the other leg',
    unit: '%',
    min: 0,
    max: 300,
  },
  {
    id: 'quadriceps-before-pct',
    name: 'Strength of straightening, of the other leg before surgery',
    unit: '%',
    min: 0,
    max: 300,
  },
  {
    id: 'hamstrings-pct',
    name: 'Strength of bending, of the other leg',
    unit: '%',
    min: 0,
    max: 300,
  },
  {
    id: 'hops-before-pct',
    name: 'Lowest of four hops, of the other leg before surgery',
    unit: '%',
    min: 0,
    max: 300,
  },
  {
    id: 'confidence',
    name: 'Questionnaire on returning to sport, its score',
    unit: 'points',
    min: 0,
    max: 100,
  },
  { id: 'weeks-steady', name: 'Since the knee last gave way', unit: 'weeks', min: 0, max: 1000 },
] as const satisfies readonly HandMeasure[];

export type HandMeasureId = (typeof handMeasures)[number]['id'];

export const handMeasureIds = handMeasures.map(({ id }) => id) as [HandMeasureId, ...HandMeasureId[]];
