import { mapMeasures } from '#core/measures/measures';
import type { MeasuredRepetition } from '#core/measurement/measurement';
import type { Judgement } from '#core/scoring/judge';

/** What a judgement without limits beside the knee's adds to what is said of the knee. */
export function ofKnee<Verdict extends Judgement['verdict']>(verdict: Verdict) {
  const decidedBy: Judgement['decidedBy'] = verdict === 'not-measured' ? null : 'knee-angle';
  const measures: Judgement['measures'] = [];
  return { verdict, knee: verdict, decidedBy, measures };
}

/** Of a repetition in which nothing beside the knee angle was measured. */
export const noRanges: MeasuredRepetition['ranges'] = mapMeasures(() => ({
  ...{ min: null, max: null },
  ...{ measuredShare: 0, mainReason: null },
}));
