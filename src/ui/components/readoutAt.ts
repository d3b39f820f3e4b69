import { curveReason, curveValue } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import { bandAt } from '#core/scoring/bandAt';
import { nearestFrame } from '#core/scoring/nearestFrame';
import { formatMeasure, formatValue } from '#words/formatMeasure';
import { formatTime } from '#words/formatTime';
import { reasonWords } from '#words/reasonWords';

/** The knee angle at a time with its band, or why there is none. */
export function readoutAt(measurement: Measurement, timeMs: number): string {
  const { timesMs, curves } = measurement;
  const kneeAngleDeg = curves['knee-angle'];
  const sample = nearestFrame(timesMs, timeMs);
  const value = sample < 0 ? null : curveValue(kneeAngleDeg, sample);
  if (value !== null) {
    const band = bandAt(measurement, sample, value >= 0 ? 'inward' : 'outward');
    return `${formatTime(timeMs)}: ${band === null ? formatValue('knee-angle', value) : formatMeasure('knee-angle', { value, band })}`;
  }
  const reason = sample < 0 ? null : curveReason(kneeAngleDeg, sample);
  return `${formatTime(timeMs)}: not measured${reason === null ? '' : `, ${reasonWords(reason).short}`}`;
}
