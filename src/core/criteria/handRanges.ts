/** What is entered by hand after surgery, as documents name it, and its range in the unit of the measure. */
export const handRanges = {
  'extension-loss': { min: -20, max: 90 },
  'bend-pct': { min: 0, max: 150 },
  'quadriceps-pct': { min: 0, max: 300 },
  'quadriceps-before-pct': { min: 0, max: 300 },
  'hamstrings-pct': { min: 0, max: 300 },
  'hops-before-pct': { min: 0, max: 300 },
  confidence: { min: 0, max: 100 },
  'weeks-steady': { min: 0, max: 1000 },
} as const;

export type HandMeasureId = keyof typeof handRanges;

export const handMeasureIds = Object.keys(handRanges) as [HandMeasureId, ...HandMeasureId[]];
