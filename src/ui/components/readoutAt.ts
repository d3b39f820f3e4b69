import { curveReason, curveValue } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import type { MeasureId } from '#core/measures/measures';
import { bandAt } from '#core/scoring/bandAt';
import { nearestFrame } from '#core/scoring/nearestFrame';
import { formatMeasure, formatValue } from '#words/formatMeasure';
import { formatTime } from '#words/formatTime';
import { reasonWords } from '#words/reasonWords';

/** A measure at a time with its band, or why there is none. */
export function readoutAt(
  measurement: Measurement,
  timeMs: number,
  measure: MeasureId = 'knee-angle',
): string {
  const { timesMs, curves } = measurement;
  const curve = curves[measure];
  const sample = nearestFrame(timesMs, timeMs);
  const value = sample < 0 ? null : curveValue(curve, sample);
  if (value !== null) {
    const band = bandAt(measurement, sample, value >= 0 ? 'most' : 'least', measure);
    return `${formatTime(timeMs)}: ${band === null ? formatValue(measure, value) : formatMeasure(measure, { value, band })}`;
  }
  const reason = sample < 0 ? null : curveReason(curve, sample);
  return `${formatTime(timeMs)}: not measured${reason === null ? '' : `, ${reasonWords(reason).short}`}`;
}
