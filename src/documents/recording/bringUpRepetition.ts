import { isFields, type Fields } from '../schema/isFields';

/**
 * Migrates an older repetition to version 7. Older ones held both ends of the knee angle, and only the end
 * that counts of every other measure.
 */
export function bringUpRepetition(older: unknown): unknown {
  if (!isFields(older)) return older;
  const { measuredShare, mainReason, kneeAngleMaxDeg, kneeAngleMinDeg, kneeDeviation, ...others } = older;
  const { others: peaks, judgement, ...rest } = others;
  return {
    ...rest,
    ranges: {
      'knee-angle': { min: kneeAngleMinDeg, max: kneeAngleMaxDeg, measuredShare, mainReason },
      'knee-off-line': endOf('knee-off-line', kneeDeviation),
      ...Object.fromEntries(
        Object.entries(isFields(peaks) ? peaks : {}).map(([id, peak]) => [id, endOf(id, peak)]),
      ),
    },
    judgement: isFields(judgement) ? bringUpJudgement(judgement, mainReason) : judgement,
  };
}

/** Which end of its range counted, for measures where it was not the one farther from 0. */
const oneEnd: Record<string, 'min' | 'max'> = { 'pelvis-place': 'min', depth: 'max' };

/** A range of which only the end that counts is known. */
function endOf(id: string, peak: unknown): Fields {
  if (!isFields(peak)) return { min: peak, max: peak };
  return { [oneEnd[id] ?? (Number(peak['value']) < 0 ? 'min' : 'max')]: peak };
}

/** Before version 6 a verdict was that of the knee angle. */
function bringUpJudgement(judgement: Fields, mainReason: unknown): Fields {
  const { verdict, reason, alignmentScorePct, knee = verdict, direction, worst, measures = [] } = judgement;
  const { decidedBy } = judgement;
  const isKnee = knee === verdict;
  const kneeReason = knee !== 'not-measured' ? null : isKnee ? reason : (mainReason ?? 'frames-missing');
  const ofKnee = {
    measure: 'knee-angle',
    verdict: knee,
    reason: kneeReason,
    end: direction === 'outward' ? 'least' : 'most',
    extreme: worst,
  };
  return {
    verdict,
    reason,
    alignmentScorePct,
    decidedBy: decidedBy ?? 'knee-angle',
    measures: Array.isArray(measures) ? [ofKnee, ...(measures as unknown[])] : measures,
  };
}
