import { curveReason, curveValue } from '../measurement/curve';
import type { Measurement } from '../measurement/measurement';
import { nearestFrame } from '../drawing/nearestFrame';
import { formatAngle } from '../words/formatAngle';
import { reasonWords } from '../words/reasonWords';
import { formatTime } from './formatTime';

/** The knee angle at a time in words, or why there is none. */
export function readoutAt({ timesMs, kneeAngleDeg }: Measurement, timeMs: number): string {
  const sample = nearestFrame(timesMs, timeMs);
  const value = sample < 0 ? null : curveValue(kneeAngleDeg, sample);
  if (value !== null) return `${formatTime(timeMs)}: ${formatAngle(value)}`;
  const reason = sample < 0 ? null : curveReason(kneeAngleDeg, sample);
  return `${formatTime(timeMs)}: not measured${reason === null ? '' : `, ${reasonWords[reason].short}`}`;
}
