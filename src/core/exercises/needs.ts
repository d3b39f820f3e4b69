/** Things that have to be at hand before a task is done alone. Common practice, no source. */
export const needIds = [
  'clear-floor',
  'support',
  'chair',
  'step',
  'slide',
  'ball',
  'wall',
  'loop',
  'tube',
  'weight',
] as const;
export type Need = (typeof needIds)[number];
