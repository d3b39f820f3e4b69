/** What a clinician asks about at a visit, as documents name it; the words are apart, since they are rarely needed. */
export const clinicianFlagIds = [
  'hot-joint',
  'calf',
  'no-weight',
  'shape',
  'swollen-after-twist',
  'straight-leg',
  'locked',
  'cold-foot',
  'numbness',
  'night-pain',
  'weight-loss',
  'cancer',
  'young-limp',
  'wound',
] as const;
export type ClinicianFlagId = (typeof clinicianFlagIds)[number];
