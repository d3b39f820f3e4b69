import type { MissingReason } from '#core/measurement/curve';
import type { Verdict } from '#core/scoring/verdict';
import { yawReading, type YawReading } from '#core/view/closerBand';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { chanceBeyond } from './chanceBeyond';
import type { ClipTruth, TrueRepetition } from './clipTruth';
import { matchRepetitions } from './matchRepetitions';
import { picturePeakAtMeasured } from './picturePeakAtMeasured';
import { readPeak, type Peak, type RecordingRepetition } from './readPeak';
import { timingErrors, type EventName } from './timingErrors';

/** Verdicts are compared at this limit, degrees inward. */
export const comparedLimitDeg = 10;

export interface RepetitionComparison {
  /** The true repetition's, from 0. */
  index: number;
  /** Greatest angle in the body's frontal plane, degrees, inward positive. */
  truePeakDeg: number;
  measuredPeakDeg: number | null;
  reason: MissingReason | 'not-found' | null;
  bandDeg: number | null;
  /** Greatest distance of the knee off the line hip to ankle, share of leg length, inward positive; null where not known. */
  kneeOffLine: { truth: number; measured: number; band: number } | null;
  /** Chance that the peak was beyond comparedLimitDeg, 0 to 1; null where it was not measured. */
  chanceBeyond: number | null;
  trueVerdict: 'in' | 'out';
  verdict: Verdict;
  /** Greatest angle in the picture over the moments that were measured: true, and as the network's joints show it. */
  truePicturePeakDeg: number | null;
  readPicturePeakDeg: number | null;
  /** Found less true, seconds. */
  timingErrorsS: Partial<Record<EventName, number>>;
}

export interface ComparedClip {
  /** What told the yaw; null where there is no view. */
  yawReading: YawReading | null;
  repsTrue: number;
  /** Complete repetitions found, whether or not one is true. */
  repsFound: number;
  repetitions: RepetitionComparison[];
}

/**
 * Holds a measured clip against its truth.
 *
 * @param derived  results of a recording document, judged at comparedLimitDeg inward; null where the clip
 *   could not be measured at all
 * @param pictureDeg  knee angle in the picture on the same time base (pictureCurve)
 */
export function compareClip(
  truth: ClipTruth,
  derived: RecordingDocument['derived'] | null,
  pictureDeg: readonly (number | null)[] = [],
): ComparedClip {
  const complete = (derived?.repetitions ?? []).filter(({ completeness }) => completeness === 'complete');
  const repetitions = matchRepetitions(truth.reps, complete).map(
    ({ truth: rep, found }): RepetitionComparison => {
      const peak = found === null ? null : readPeak(found);
      return {
        index: rep.index,
        truePeakDeg: rep.measuredPeakFppaFrontal,
        measuredPeakDeg: peak?.peakDeg ?? null,
        reason: peak === null ? 'not-found' : peak.reason,
        bandDeg: peak?.bandDeg ?? null,
        kneeOffLine: found === null ? null : kneeOffLineOf(rep, found),
        chanceBeyond: peak === null ? null : chanceOf(peak),
        trueVerdict: rep.measuredPeakFppaFrontal > comparedLimitDeg ? 'out' : 'in',
        verdict: found?.judgement.verdict ?? 'not-measured',
        truePicturePeakDeg:
          derived === null || found === null ? null : picturePeakAtMeasured(truth, derived, found),
        readPicturePeakDeg:
          derived === null || found === null ? null : readPicturePeak(pictureDeg, derived, found),
        timingErrorsS: found === null ? {} : timingErrors(rep, found),
      };
    },
  );
  const cues = derived?.view?.cues;
  return {
    yawReading: cues === undefined ? null : yawReading(cues),
    repsTrue: truth.reps.length,
    repsFound: complete.length,
    repetitions,
  };
}

function kneeOffLineOf(
  { peakKneeOffsetFrontal: truth }: TrueRepetition,
  { ranges }: RecordingRepetition,
): RepetitionComparison['kneeOffLine'] {
  const peak = ranges['knee-off-line']?.max ?? null;
  return peak === null || truth === undefined ? null : { truth, measured: peak.value, band: peak.band };
}

function chanceOf({ peakDeg, bandDeg }: Peak): number | null {
  return peakDeg === null || bandDeg === null ? null : chanceBeyond(peakDeg, bandDeg, comparedLimitDeg);
}

/** Greatest picture angle of the network's joints over the measured moments of a repetition; null where there is none. */
function readPicturePeak(
  pictureDeg: readonly (number | null)[],
  { curves }: RecordingDocument['derived'],
  { loadedFrom, loadedTo }: RecordingDocument['derived']['repetitions'][number],
): number | null {
  const { values } = curves['knee-angle'];
  let peakDeg: number | null = null;
  for (let i = loadedFrom; i <= loadedTo; i++) {
    const deg = pictureDeg[i] ?? null;
    if (deg !== null && values[i] !== null && (peakDeg === null || deg > peakDeg)) peakDeg = deg;
  }
  return peakDeg;
}
