import type { ClipTruth, TrueRepetition } from '#tools/validation/clipTruth';
import type { RepetitionComparison } from '#tools/validation/compareClip';
import type { RecordingRepetition } from '#tools/validation/readPeak';
import { kneeJudged, rangesWith } from '../../../support/kneeJudgement';

/** A sit-to-stand repetition of the truth, seconds; peaks 12 degrees in the frontal plane, 9 in the picture. */
export function trueRepetition(
  index: number,
  startS: number,
  changes: Partial<TrueRepetition> = {},
): TrueRepetition {
  return {
    index,
    start: startS,
    liftOff: startS + 0.5,
    bottom: null,
    top: startS + 1.5,
    topEnd: startS + 2,
    touchDown: startS + 3,
    end: startS + 3.5,
    measuredPeakFppaFrontal: 12,
    measuredPeakFppaImage: 9,
    ...changes,
  };
}

export function clipTruth(reps: TrueRepetition[], perFrame: ClipTruth['perFrame'] = []): ClipTruth {
  return {
    task: 'split-stance-sit-to-stand',
    side: 'right',
    workingSide: 'R',
    camera: { yawDeg: 0, rollDeg: 0 },
    reps,
    perFrame,
  };
}

/** A found repetition whose loaded time is given in seconds; its peak is 10.5 degrees inward. */
export function foundRepetition(
  number: number,
  loadedFromS: number,
  loadedToS: number,
  changes: Partial<RecordingRepetition> = {},
): RecordingRepetition {
  const peak = { value: 10.5, sample: 40, timeMs: 1333, band: 4 };
  return {
    number,
    completeness: 'complete',
    events: {
      startMs: (loadedFromS - 0.4) * 1000,
      seatOffMs: loadedFromS * 1000,
      topMs: (loadedFromS + 1.1) * 1000,
      topEndMs: (loadedFromS + 1.4) * 1000,
      bottomMs: null,
      seatContactMs: loadedToS * 1000,
      endMs: (loadedToS + 0.3) * 1000,
    },
    loadedFrom: Math.round(loadedFromS * 30),
    loadedTo: Math.round(loadedToS * 30),
    ranges: rangesWith({
      'knee-angle': {
        min: { value: -3, sample: 50, timeMs: 1667, band: 3.5 },
        max: peak,
        measuredShare: 0.8,
        mainReason: 'thigh-foreshortened',
      },
      'knee-off-line': { max: { value: 0.05, sample: 40, timeMs: 1333, band: 0.02 } },
    }),
    judgement: kneeJudged({ verdict: 'cant-tell', worst: peak, alignmentScorePct: 90 }),
    ...changes,
  };
}

export const notMeasured: RecordingRepetition['judgement'] = kneeJudged({
  verdict: 'not-measured',
  reason: 'out-of-picture',
});

/** A repetition set against its truth: 10 degrees, and read as such, without a band. */
export function comparedRepetition(changes: Partial<RepetitionComparison>): RepetitionComparison {
  return {
    index: 0,
    truePeakDeg: 10,
    measuredPeakDeg: 10,
    reason: null,
    bandDeg: null,
    kneeOffLine: null,
    chanceBeyond: null,
    trueVerdict: changes.truePeakDeg !== undefined && changes.truePeakDeg > 10 ? 'out' : 'in',
    verdict: 'cant-tell',
    truePicturePeakDeg: 10,
    readPicturePeakDeg: 10,
    timingErrorsS: {},
    ...changes,
  };
}
