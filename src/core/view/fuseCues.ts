import { sum } from 'd3-array';
import type { ViewCue } from './viewCue';

export interface YawEstimate {
  /** How far the body is turned from the camera, degrees; positive = its front points to the picture's right. */
  yawDeg: number;
  /** One standard deviation, degrees. */
  sdDeg: number;
  cues: ViewCue[];
}

/**
 * Weights readings of one angle by the inverse of their variance. Readings that disagree more than expected
 * widen the result.
 *
 * @param cues  at least one
 * @throws RangeError where there is none
 * Source:  inverse-variance weighting; the widening is the Birge ratio (R. T. Birge 1932, from memory)
 */
export function fuseCues(cues: ViewCue[]): YawEstimate {
  if (cues.length === 0) throw new RangeError('A yaw needs at least one reading.');
  const weight = sum(cues, ({ sdDeg }) => 1 / sdDeg ** 2);
  const yawDeg = sum(cues, (cue) => cue.yawDeg / cue.sdDeg ** 2) / weight;
  const disagreement = sum(cues, (cue) => ((cue.yawDeg - yawDeg) / cue.sdDeg) ** 2);
  const birge = cues.length > 1 ? Math.sqrt(Math.max(1, disagreement / (cues.length - 1))) : 1;
  return { yawDeg, sdDeg: birge / Math.sqrt(weight), cues };
}
