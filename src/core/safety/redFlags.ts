import type { SignId } from './signs';

/** A sign that means: do not exercise, contact a professional. Its words and its advice are in `words/messages`. */
export interface RedFlag {
  id: SignId;
  /** Where it is published; null: common practice, no source. */
  source: string | null;
}

export const kneePage =
  'public health service, musculoskeletal physiotherapy, page on knees (NHS Greater Glasgow and Clyde)';
export const ottawa = 'Ottawa knee rule, Stiell et al. 1996, JAMA 275:611, in plain words';

/** The usual ones, not a complete list. They refer to a professional and suggest no diagnosis. */
export const redFlags: readonly RedFlag[] = [
  { id: 'hot-joint', source: kneePage },
  { id: 'calf', source: null },
  { id: 'no-weight', source: kneePage },
  { id: 'fall-or-blow', source: ottawa },
  { id: 'swollen-after-twist', source: null },
  { id: 'straight-leg', source: null },
  { id: 'shape', source: kneePage },
  { id: 'cold-foot', source: null },
  { id: 'numbness', source: null },
  { id: 'night-pain', source: kneePage },
  { id: 'weight-loss', source: null },
  { id: 'young-limp', source: null },
  { id: 'wound', source: null },
  { id: 'dizzy', source: null },
];

/** Signs that are only asked for as new since the last session. */
export const otherSigns: readonly RedFlag[] = [
  { id: 'swollen', source: null },
  { id: 'much-swollen', source: null },
  { id: 'gave-way', source: null },
  { id: 'locked', source: null },
  { id: 'fell', source: ottawa },
];
