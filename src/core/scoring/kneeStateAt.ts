import type { Sureness } from '../chance/grade';
import { curveReason, curveValue, type MissingReason } from '../measurement/curve';
import type { Measurement } from '../measurement/measurement';
import type { LimitEnd } from '../measures/limitEnd';
import type { Limits } from '../protocol/limits';
import { bandAt } from './bandAt';
import { beyond } from './beyond';
import { chanceWithin } from './chanceWithin';
import type { Direction } from './deciding';
import { nearestFrame } from './nearestFrame';
import { verdictOf, type Verdict } from './verdict';

/** The measured state of the knee at one time. */
export interface KneeState {
  verdict: Verdict;
  direction: Direction | null;
  /** Measured angle, degrees, inward positive; null where there is none. */
  deg: number | null;
  /** Why there is no angle; null where there is one, and before there is any sample. */
  reason: MissingReason | null;
}

/**
 * How the measured knee angle compares with its limits at a time; looked up, not measured. It is judged with
 * the error band of the repetition that it belongs to, so that a picture never says more than the verdict.
 */
export function kneeStateAt(
  measurement: Measurement,
  limits: Limits,
  timeMs: number,
  sureness: Sureness,
): KneeState {
  const curve = measurement.curves['knee-angle'];
  const sample = nearestFrame(measurement.timesMs, timeMs);
  const deg = sample < 0 ? null : curveValue(curve, sample);
  if (deg === null) {
    const reason = sample < 0 ? null : curveReason(curve, sample);
    return { verdict: 'not-measured', direction: null, deg, reason };
  }
  const ends = limits['knee-angle'];
  const banded = (end: LimitEnd) => ({ value: deg, band: bandAt(measurement, sample, end) ?? 0 });
  const chance = chanceWithin({ least: banded('least'), most: banded('most') }, ends);
  return {
    verdict: verdictOf(chance, sureness),
    direction: beyond('most', deg, ends) >= beyond('least', deg, ends) ? 'inward' : 'outward',
    deg,
    reason: null,
  };
}
