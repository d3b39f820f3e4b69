import { mapMeasures, type MeasureId } from '../measures/measures';
import type { FoundRepetition } from '../segmentation/findRepetitions';
import { missingReasons, type Curve, type MissingReason } from './curve';
import { isAtEdge } from './isAtEdge';
import type { MeasuredRepetition } from './measurement';
import type { Extreme, MeasureRange } from './measureRange';
import type { Series } from './seenBody';

/** Takes a repetition's values from the curves while the working leg bears load. */
export function measureRepetition(
  { completeness, events, loadedFrom, loadedTo }: FoundRepetition,
  number: number,
  timesMs: Float64Array,
  series: Record<MeasureId, Series>,
): MeasuredRepetition {
  const ranges = mapMeasures((id, { hasFarBand }): MeasureRange => {
    const { curve, band } = series[id];
    const { min, max, ...share } = summarise(curve, timesMs, loadedFrom, loadedTo);
    const moments = hasFarBand ? bandsWithin(curve, band, loadedFrom, loadedTo) : [];
    const extreme = (peak: Peak | null, end: 1 | -1): Extreme | null => {
      if (peak === null) return null;
      const banded = withBand(peak, end, band, moments);
      return isAtEdge(curve, timesMs, peak.sample, loadedFrom, loadedTo) ? widenAtEdge(banded) : banded;
    };
    return { min: extreme(min, -1), max: extreme(max, 1), ...share };
  });
  return { number, completeness, events, loadedFrom, loadedTo, ranges };
}

export interface CurveSummary {
  /** Share of the samples that have a value, 0 to 1. */
  measuredShare: number;
  /** The reason behind most of what is missing; null where nothing is. */
  mainReason: MissingReason | null;
  max: Peak | null;
  min: Peak | null;
}

type Peak = Pick<Extreme, 'value' | 'sample' | 'timeMs'>;

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

/** So many samples of a repetition tell how far its true peak may lie from the measured one. */
const bandSamples = 6;

interface BandedValue {
  value: number;
  band: number;
}

/** Values with their bands, spread evenly over a repetition. */
function bandsWithin(curve: Curve, bandAt: Series['band'], from: number, to: number): BandedValue[] {
  const step = Math.max(1, Math.floor((to - from) / bandSamples));
  const bands: BandedValue[] = [];
  for (let sample = from; sample <= to; sample += step)
    if (curve.missing[sample] === 0) bands.push({ value: curve.values[sample]!, band: bandAt(sample).whole });
  return bands;
}

interface BandedPeak extends Peak {
  band: number;
  ownBand: number;
}

/**
 * A peak with its band. Where another moment's band reaches farther out than the peak's own, the true peak may be
 * there: the band of a largest value (end 1) or a smallest one (end -1) ends where the farthest of all bands ends.
 */
function withBand(
  peak: Peak,
  end: 1 | -1,
  bandAt: Series['band'],
  moments: readonly BandedValue[],
): BandedPeak & { isAtEdge: false } {
  const reach = moments.map(({ value, band }) => end * (value - peak.value) + band);
  const { whole, own } = bandAt(peak.sample);
  return { ...peak, band: Math.max(whole, ...reach), ownBand: own, isAtEdge: false };
}

/** How much wider a band is beside a gap: nine of ten peaks of rendered recordings with gaps lie within (docs/view.md). */
const edgeShare = 1.2;

/** What is added is the repetition's own. */
function widenAtEdge({ band, ownBand, ...peak }: BandedPeak): Extreme {
  const sharedSquare = band * band - ownBand * ownBand;
  const wide = edgeShare * band;
  return { ...peak, band: wide, ownBand: Math.sqrt(wide * wide - sharedSquare), isAtEdge: true };
}
