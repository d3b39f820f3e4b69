import { bringUpLimits } from '../schema/bringUpLimits';
import { isFields, type Fields } from '../schema/isFields';
import { bringUpRepetition } from './bringUpRepetition';
import { recordingVersion } from './recordingDocument';
import { withChances } from './withChances';

/**
 * Migrates a recording document of an older version to this one. Version 2 added what bends before a set
 * showed, which version 1 lacks, and the camera's roll: version 1 neither estimated nor removed any. Version
 * 3 added when a set was started, version 4 corrections and the therapist's review, version 5 which session
 * limits were copied from; older ones lack them. Version 6 added limits of measures other than the knee
 * angle: before, a verdict was the knee's alone. Version 7 put the knee angle among the other measures: in
 * limits, curves, ranges and judgements. Version 8 added which frames were looked at more closely. Version 9
 * added the chance behind each verdict, and names the reading of the view that rests on what the person was
 * asked to do 'facing-camera'. Version 10 added whether the side is in doubt. Version 11 added whether limits
 * hold for later recordings too: before, all did.
 */
export function bringUpRecording(older: object, version: number): object {
  if (version < 1 || version >= recordingVersion) return older;
  const { derived, limits, review, ...rest }: Fields =
    version < 7 ? toVersion7(older as Fields) : { ...older };
  return {
    ...rest,
    ...(review === undefined ? {} : { review: isFields(review) ? withLaterLimits(review) : review }),
    limits,
    version: recordingVersion,
    derived: isFields(derived) ? bringUpDerived(derived, limits, version) : derived,
  };
}

/** Verdicts of later sets that rest on these limits stay as they are. */
function withLaterLimits({ limitsSet, ...rest }: Fields): Fields {
  return {
    ...rest,
    limitsSet: Array.isArray(limitsSet)
      ? limitsSet.map((set) => (isFields(set) ? { ...set, forLater: true } : set))
      : limitsSet,
  };
}

function bringUpDerived({ view, ...derived }: Fields, limits: unknown, version: number): Fields {
  const present = { ...derived, view: bringUpView(view, version) };
  return version < 9 ? withChances(present, limits) : present;
}

function bringUpView(view: unknown, version: number): unknown {
  if (!isFields(view)) return view;
  const { cues, ...rest } = view;
  return {
    ...(version === 1 ? { rollDeg: 0 } : {}),
    ...rest,
    cues: Array.isArray(cues) ? cues.map(bringUpCue) : cues,
  };
}

function bringUpCue(cue: unknown): unknown {
  return isFields(cue) && cue['name'] === 'told-to-face-the-camera' ? { ...cue, name: 'facing-camera' } : cue;
}

function toVersion7({ limits, review, derived, ...rest }: Fields): Fields {
  return {
    ...rest,
    limits: bringUpLimits(limits),
    derived: isFields(derived) ? toDerived7(derived) : derived,
    ...(review === undefined ? {} : { review: isFields(review) ? bringUpReview(review) : review }),
  };
}

function toDerived7({ kneeAngleDeg, kneeDeviation, repetitions, ...rest }: Fields): Fields {
  return {
    ...rest,
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
