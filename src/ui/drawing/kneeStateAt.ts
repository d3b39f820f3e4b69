import { curveReason, curveValue, type MissingReason } from '#core/measurement/curve';
import type { Measurement } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';
import type { Direction } from '#core/scoring/deciding';
import { beyond } from '#core/scoring/judgeMeasure';
import { verdictOf, type Verdict } from '#core/scoring/verdict';
import { bandAt } from './bandAt';
import { nearestFrame } from './nearestFrame';

/** How the knee stands at one time, as it was measured. */
export interface KneeState {
  verdict: Verdict;
  direction: Direction | null;
  /** Measured angle, degrees, inward positive; null where there is none. */
  deg: number | null;
  /** Why there is no angle; null where there is one, and before there is any sample. */
  reason: MissingReason | null;
}

/**
 * How the measured knee angle stands to its limits at a time; looked up, not measured. It is judged with the error
 * band of the repetition that it belongs to, so that a picture never says more than the verdict.
 */
export function kneeStateAt(measurement: Measurement, limits: Limits, timeMs: number): KneeState {
  const curve = measurement.curves['knee-angle'];
  const sample = nearestFrame(measurement.timesMs, timeMs);
  const deg = sample < 0 ? null : curveValue(curve, sample);
  if (deg === null) {
    const reason = sample < 0 ? null : curveReason(curve, sample);
    return { verdict: 'not-measured', direction: null, deg, reason };
  }
  const inwardExcessDeg = beyond('most', deg, limits['knee-angle']);
  const outwardExcessDeg = beyond('least', deg, limits['knee-angle']);
  const direction = inwardExcessDeg >= outwardExcessDeg ? 'inward' : 'outward';
  return {
    verdict: verdictOf(
      Math.max(inwardExcessDeg, outwardExcessDeg),
      bandAt(measurement, sample, direction) ?? 0,
    ),
    direction,
    deg,
    reason: null,
  };
}
