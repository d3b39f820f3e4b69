import { curveReason, curveValue } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import { bandAt } from '../drawing/bandAt';
import { nearestFrame } from '../drawing/nearestFrame';
import { formatAngle } from '#words/formatAngle';
import { reasonWords } from '#words/reasonWords';
import { formatTime } from '#words/formatTime';
import { shortAngle } from '#words/formatWithBand';

/** The knee angle at a time with its band, or why there is none. */
export function readoutAt(measurement: Measurement, timeMs: number): string {
  const { timesMs, kneeAngleDeg } = measurement;
  const sample = nearestFrame(timesMs, timeMs);
  const value = sample < 0 ? null : curveValue(kneeAngleDeg, sample);
  if (value !== null) {
    const band = bandAt(measurement, sample, value >= 0 ? 'inward' : 'outward');
    return `${formatTime(timeMs)}: ${band === null ? formatAngle(value) : shortAngle({ value, band })}`;
  }
  const reason = sample < 0 ? null : curveReason(kneeAngleDeg, sample);
  return `${formatTime(timeMs)}: not measured${reason === null ? '' : `, ${reasonWords[reason].short}`}`;
}
