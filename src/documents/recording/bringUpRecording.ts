import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields, type Fields } from '../schema/isFields';
import { bringUpRepetition } from './bringUpRepetition';

/**
 * Makes a session document of this version of an older one. Version 2 added what bends before a set showed, which a
 * document of version 1 goes without, and the camera's roll, which was not told then: none was taken out. Version 3 added
 * when a set was begun, version 4 corrections and what a therapist sets down, version 5 from where limits were taken over;
 * older ones go without. Version 6 added limits of measures beside the knee angle: before, a verdict was the knee's.
 * Version 7 put the knee angle among the other measures: in limits, curves, ranges and judgements.
 */
export function bringUpRecording(older: object, version: number): object {
  if (version < 1 || version > 6) return older;
  const { limits, review, derived, ...rest } = older as Fields;
  return {
    ...rest,
    version: 7,
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
