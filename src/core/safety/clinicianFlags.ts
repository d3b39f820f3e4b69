import type { ClinicianFlagId } from './clinicianFlagIds';
import { kneePage, ottawa } from './redFlags';

/** What a clinician asks about at the first visit. A sign refers to somebody else; it is no diagnosis. */
export interface ClinicianFlag {
  id: ClinicianFlagId;
  /** What is asked or looked for, as a phrase. */
  asks: string;
  /** Where it is published; null: common practice, no source. */
  source: string | null;
}

/** The usual ones, not a complete list. */
export const clinicianFlags = [
  { id: 'hot-joint', asks: 'a hot, red or suddenly swollen knee, fever or feeling ill', source: kneePage },
  { id: 'calf', asks: 'a calf that is newly swollen, warm or painful', source: null },
  { id: 'no-weight', asks: 'no four steps on the leg since an injury', source: ottawa },
  { id: 'shape', asks: 'a changed shape of the knee, or a kneecap out of place', source: kneePage },
  { id: 'swollen-after-twist', asks: 'swelling within hours of a twist or blow', source: null },
  { id: 'straight-leg', asks: 'a straight leg that can no longer be lifted', source: null },
  { id: 'locked', asks: 'a knee that is locked and can’t be straightened', source: kneePage },
  { id: 'cold-foot', asks: 'a foot that is cold, pale or blue', source: null },
  { id: 'numbness', asks: 'new numbness or weakness of the leg', source: null },
  {
    id: 'night-pain',
    asks: 'constant pain that neither rest nor movement changes, worse at night',
    source: kneePage,
  },
  { id: 'weight-loss', asks: 'weight lost without a reason', source: kneePage },
  { id: 'cancer', asks: 'cancer, now or before', source: kneePage },
  { id: 'young-limp', asks: 'a child or teenager with a limp, or pain in hip, groin or thigh', source: null },
  { id: 'wound', asks: 'a wound or skin at the knee that is not healing', source: null },
] as const satisfies readonly ClinicianFlag[];
