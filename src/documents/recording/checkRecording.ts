import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import type { RecordingDocument } from './recordingDocument';
import { RecordingFileProblem } from '../reading/recordingFileProblem';

/**
 * Checks what the schema can't say of a session document: parts that belong together fit, and time runs forward.
 *
 * @param session  its joints may be left out, where they stand elsewhere
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function checkRecording({
  observed,
  derived,
}: Pick<RecordingDocument, 'derived'> & Partial<Pick<RecordingDocument, 'observed'>>): void {
  const fault = (observed === undefined ? null : observedFault(observed)) ?? derivedFault(derived);
  if (fault === null) return;
  throw new RecordingFileProblem(
    `This session document is damaged: ${fault}. Save it again where it came from.`,
  );
}

function observedFault({ timesMs, points, ...observed }: RecordingDocument['observed']): string | null {
  const frames = timesMs.length;
  for (const name of ['xPx', 'yPx', 'score'] as const) {
    const { length } = observed[name];
    if (length !== frames * keypointCount)
      return `"observed.${name}" has ${length} values where ${frames} frames need ${frames * keypointCount}`;
  }
  if (timesMs.some((timeMs, i) => i > 0 && timeMs <= timesMs[i - 1]!))
    return 'its frame times do not increase';
  if (points.some((name, i) => name !== keypointNames[i])) return 'its body points are in another order';
  return null;
}

function derivedFault(derived: RecordingDocument['derived']): string | null {
  const { repetitions, kneeAngleDeg, kneeDeviation, rateHz } = derived;
  const samples = kneeAngleDeg.values.length;
  if (kneeDeviation.values.length !== samples) return 'its curves differ in length';
  if (samples > 0 && rateHz === 0) return 'its curves have no time base';
  if (!curveFits(kneeAngleDeg)) return '"derived.kneeAngleDeg" gives reasons that do not fit its values';
  if (!curveFits(kneeDeviation)) return '"derived.kneeDeviation" gives reasons that do not fit its values';
  for (const [i, repetition] of repetitions.entries()) {
    const { number, loadedFrom, loadedTo, events, judgement } = repetition;
    const { kneeAngleMaxDeg, kneeAngleMinDeg, kneeDeviation: farthest, others } = repetition;
    const limited = judgement.measures.map(({ extreme }) => extreme);
    const extremes = [kneeAngleMaxDeg, kneeAngleMinDeg, farthest, ...Object.values(others), ...limited];
    const latest = Math.max(loadedTo, ...extremes.map((extreme) => extreme?.sample ?? 0));
    if (loadedFrom > loadedTo || latest >= samples) return 'a repetition lies outside the recording';
    const previous = repetitions[i - 1];
    if (number !== i + 1 || (previous !== undefined && events.startMs < previous.events.startMs))
      return 'its repetitions are out of order';
    if (!judgementFits(judgement)) return `the judgement of repetition ${number} contradicts itself`;
  }
  return null;
}

/** Whether runs of reasons stand in order, within the curve, and exactly where there is no value. */
function curveFits({ values, missing }: RecordingDocument['derived']['kneeAngleDeg']): boolean {
  let next = 0;
  for (const { from, to } of missing) {
    if (from < next || to < from || to >= values.length) return false;
    for (; next < from; next++) if (values[next] === null) return false;
    for (; next <= to; next++) if (values[next] !== null) return false;
  }
  return !values.includes(null, next);
}

type Judgement = RecordingDocument['derived']['repetitions'][number]['judgement'];

function judgementFits({ verdict, reason, decidedBy, knee, measures, ...ofKnee }: Judgement): boolean {
  const { direction, worst, alignmentScorePct } = ofKnee;
  const kneeMeasured = knee !== 'not-measured';
  const ids = measures.map(({ measure }) => measure);
  const decides = decidedBy === null || decidedBy === 'knee-angle' ? knee : undefined;
  return (
    [direction !== null, worst !== null, alignmentScorePct !== null].every((has) => has === kneeMeasured) &&
    (reason === null) === (verdict !== 'not-measured') &&
    (decidedBy === null) === (decides === 'not-measured') &&
    verdict === (decides ?? measures.find(({ measure }) => measure === decidedBy)?.verdict) &&
    new Set(ids).size === ids.length &&
    measures.every((one) =>
      [one.reason === null, one.extreme !== null].every((has) => has === (one.verdict !== 'not-measured')),
    )
  );
}
