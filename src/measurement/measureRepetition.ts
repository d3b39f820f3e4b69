import type { FrontalCurves } from './frontalCurves';
import type { FoundRepetition } from '../segmentation/findRepetitions';
import { mapOthers, type OtherMeasureId, type OtherMeasures } from './otherMeasures';
import { missingReasons, type Curve, type MissingReason } from './curve';
import type { Extreme, MeasuredRepetition } from './measurement';

/** Takes a repetition's values from the curves while the working leg bears load. */
export function measureRepetition(
  { completeness, events, loadedFrom, loadedTo }: FoundRepetition,
  number: number,
  timesMs: Float64Array,
  curves: FrontalCurves,
  others: OtherMeasures | null,
): MeasuredRepetition {
  const angle = summarise(curves.kneeAngleDeg, timesMs, loadedFrom, loadedTo);
  const deviation = summarise(curves.kneeDeviation, timesMs, loadedFrom, loadedTo);
  return {
    number,
    completeness,
    events,
    loadedFrom,
    loadedTo,
    measuredShare: angle.measuredShare,
    mainReason: angle.mainReason,
    kneeAngleMaxDeg: withBand(angle.max, curves.kneeAngleBandDeg),
    kneeAngleMinDeg: withBand(angle.min, curves.kneeAngleBandDeg),
    kneeDeviation: withBand(farther(deviation.max, deviation.min), curves.kneeDeviationBand),
    others: mapOthers((id) => {
      const measure = others?.[id];
      if (measure === undefined) return null;
      const { max, min } = summarise(measure.curve, timesMs, loadedFrom, loadedTo);
      return withBand(pickPeak[id](max, min), measure.band);
    }),
  };
}

export interface CurveSummary {
  /** Share of the samples that have a value, 0 to 1. */
  measuredShare: number;
  /** The reason behind most of what is missing; null where nothing is. */
  mainReason: MissingReason | null;
  max: Peak | null;
  min: Peak | null;
}

type Peak = Omit<Extreme, 'band'>;

/** Extremes of a curve between two samples (both included) and what is missing there. */
export function summarise(curve: Curve, timesMs: Float64Array, from: number, to: number): CurveSummary {
  const counts = new Array<number>(missingReasons.length).fill(0);
  let max: Peak | null = null;
  let min: Peak | null = null;
  for (let sample = from; sample <= to; sample++) {
    const code = curve.missing[sample]!;
    counts[code]!++;
    if (code !== 0) continue;
    const value = curve.values[sample]!;
    if (max === null || value > max.value) max = { value, sample, timeMs: timesMs[sample]! };
    if (min === null || value < min.value) min = { value, sample, timeMs: timesMs[sample]! };
  }
  const [measured = 0, ...missing] = counts;
  const most = Math.max(...missing);
  return {
    measuredShare: measured / Math.max(1, to - from + 1),
    mainReason: most === 0 ? null : (missingReasons[missing.indexOf(most) + 1] as MissingReason),
    max,
    min,
  };
}

/** Which end of a measure counts for a repetition: the farther from 0, the smallest, or the largest. */
const pickPeak: Record<OtherMeasureId, (max: Peak | null, min: Peak | null) => Peak | null> = {
  'knee-over-foot': farther,
  'hip-over-knee': farther,
  'pelvic-drop': farther,
  'trunk-lean': farther,
  'pelvis-place': (_, min) => min,
  depth: (max) => max,
};

function withBand(peak: Peak | null, bandAt: (sample: number) => number): Extreme | null {
  return peak === null ? null : { ...peak, band: bandAt(peak.sample) };
}

function farther(a: Peak | null, b: Peak | null): Peak | null {
  if (a === null || b === null) return a ?? b;
  return Math.abs(b.value) > Math.abs(a.value) ? b : a;
}
