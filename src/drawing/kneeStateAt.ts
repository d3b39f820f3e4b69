import type { Measurement } from '../measurement/measurement';
import type { Limits } from '../protocol/limits';
import { verdictOf } from '../scoring/judge';
import type { KneeState } from './drawLeg';
import { nearestFrame } from './nearestFrame';

/** How the measured knee angle stands to its limits at a time; looked up, not measured. */
export function kneeStateAt(
  { timesMs, kneeAngleDeg }: Measurement,
  limits: Limits,
  timeMs: number,
): KneeState {
  const sample = nearestFrame(timesMs, timeMs);
  if (sample < 0 || kneeAngleDeg.missing[sample] !== 0) return { verdict: 'not-measured', direction: null };
  const deg = kneeAngleDeg.values[sample]!;
  const inwardExcessDeg = deg - limits.kneeInwardDeg;
  const outwardExcessDeg = -deg - limits.kneeOutwardDeg;
  return {
    verdict: verdictOf(Math.max(inwardExcessDeg, outwardExcessDeg), 0),
    direction: inwardExcessDeg >= outwardExcessDeg ? 'inward' : 'outward',
  };
}
