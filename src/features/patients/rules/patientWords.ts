import type { Onset } from '#documents/patient/caseEntries';
import type { PainfulSide, PainSite } from '#documents/patient/patientDocument';

export const sideWords: Record<PainfulSide, string> = {
  left: 'left knee',
  right: 'right knee',
  both: 'both knees',
};

export const onsetWords: Record<Onset, string> = {
  sudden: 'all at once',
  gradual: 'bit by bit',
};

export const siteWords: Record<PainSite, string> = {
  front: 'front',
  outer: 'outer side',
  inner: 'inner side',
  behind: 'behind',
  elsewhere: 'elsewhere',
};
