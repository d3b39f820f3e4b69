/** Warning signs, as documents name them. */
export const signIds = [
  'hot-joint',
  'calf',
  'no-weight',
  'fall-or-blow',
  'swollen-after-twist',
  'straight-leg',
  'shape',
  'cold-foot',
  'numbness',
  'night-pain',
  'weight-loss',
  'young-limp',
  'wound',
  'dizzy',
  'swollen',
  'much-swollen',
  'gave-way',
  'locked',
  'fell',
] as const;
export type SignId = (typeof signIds)[number];
