import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields, type Fields } from '../schema/isFields';
import { bringUpRepetition } from './bringUpRepetition';

/**
 * Migrates a recording document of an older version to this one. Version 2 added what bends before a set
 * showed, which version 1 lacks, and the camera's roll: version 1 neither estimated nor removed any. Version
 * 3 added when a set was started, version 4 corrections and the therapist's review, version 5 which session
 * limits were copied from; older ones lack them. Version 6 added limits of measures other than the knee
 * angle: before, a verdict was the knee's alone. Version 7 put the knee angle among the other measures: in
 * limits, curves, ranges and judgements. Version 8 added which frames were looked at more closely.
 */
export function bringUpRecording(older: object, version: number): object {
  if (version < 1 || version > 7) return older;
  if (version === 7) return { ...older, version: 8 };
  const { limits, review, derived, ...rest } = older as Fields;
  return {
    ...rest,
    version: 8,
    limits: bringUpLimits(limits),
    derived: isFields(derived) ? bringUpDerived(derived, version) : derived,
    ...(review === undefined ? {} : { review: isFields(review) ? bringUpReview(review) : review }),
  };
}

function bringUpDerived(derived: Fields, version: number): Fields {
  const { view, kneeAngleDeg, kneeDeviation, repetitions, ...rest } = derived;
  return {
    ...rest,
    view: version === 1 && isFields(view) ? { rollDeg: 0, ...view } : view,
    curves: { 'knee-angle': kneeAngleDeg, 'knee-off-line': kneeDeviation },
    repetitions: Array.isArray(repetitions) ? repetitions.map(bringUpRepetition) : repetitions,
  };
}

function bringUpReview(review: Fields): Fields {
  const { limitsSet, ...rest } = review;
  return {
    ...rest,
    limitsSet: Array.isArray(limitsSet)
      ? limitsSet.map((set) => (isFields(set) ? { ...set, limits: bringUpLimits(set['limits']) } : set))
      : limitsSet,
  };
}
