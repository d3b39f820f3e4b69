import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import { mapAlwaysLimited } from '#core/measures/measures';
import type { RecordingDocument } from './recordingDocument';

/**
 * What the schema can't check in a recording document: parts that don't fit together, or time that runs
 * backwards.
 *
 * @param recording  its joints may be left out, where they are elsewhere
 * @returns null where all is well
 */
export function recordingFault({
  observed,
  derived,
}: Pick<RecordingDocument, 'derived'> & Partial<Pick<RecordingDocument, 'observed'>>): string | null {
  return (observed === undefined ? null : observedFault(observed)) ?? derivedFault(derived);
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
  const { repetitions, curves, rateHz } = derived;
  const samples = curves['knee-angle'].values.length;
  if (Object.values(curves).some(({ values }) => values.length !== samples))
    return 'its curves differ in length';
  if (samples > 0 && rateHz === 0) return 'its curves have no time base';
  const unfit = Object.entries(curves).find(([, curve]) => !curveFits(curve));
  if (unfit !== undefined) return `"derived.curves.${unfit[0]}" gives reasons that do not fit its values`;
  for (const [i, repetition] of repetitions.entries()) {
    const { number, loadedFrom, loadedTo, events, ranges, judgement } = repetition;
    const limited = judgement.measures.map(({ extreme }) => extreme);
    const extremes = [...Object.values(ranges).flatMap((range) => [range?.min, range?.max]), ...limited];
    const latest = Math.max(loadedTo, ...extremes.map((extreme) => extreme?.sample ?? 0));
    if (loadedFrom > loadedTo || latest >= samples) return 'a repetition lies outside the recording';
    const previous = repetitions[i - 1];
    if (number !== i + 1 || (previous !== undefined && events.startMs < previous.events.startMs))
      return 'its repetitions are out of order';
    if (!judgementFits(judgement)) return `the judgement of repetition ${number} contradicts itself`;
  }
  return null;
}

/** Whether runs of reasons are in order, within the curve, and exactly where there is no value. */
function curveFits({ values, missing }: RecordingDocument['derived']['curves']['knee-angle']): boolean {
  let next = 0;
  for (const { from, to } of missing) {
    if (from < next || to < from || to >= values.length) return false;
    for (; next < from; next++) if (values[next] === null) return false;
    for (; next <= to; next++) if (values[next] !== null) return false;
  }
  return !values.includes(null, next);
}

type Judgement = RecordingDocument['derived']['repetitions'][number]['judgement'];

function judgementFits({ measures, alignmentScorePct, ...whole }: Judgement): boolean {
  const of = (id: Judgement['decidedBy']) => measures.find(({ measure }) => measure === id);
  const deciding = of(whole.decidedBy);
  const ids = measures.map(({ measure }) => measure);
  const always = Object.values(mapAlwaysLimited(of));
  return (
    always.every((one) => one !== undefined) &&
    (of('knee-angle')?.verdict === 'not-measured') === (alignmentScorePct === null) &&
    (whole.reason === null) === (whole.verdict !== 'not-measured') &&
    whole.verdict === deciding?.verdict &&
    whole.chanceInLine === deciding.chanceInLine &&
    new Set(ids).size === ids.length &&
    measures.every((one) =>
      [one.reason === null, one.extreme !== null, one.chanceInLine !== null].every(
        (has) => has === (one.verdict !== 'not-measured'),
      ),
    )
  );
}
