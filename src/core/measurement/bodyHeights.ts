import { medianOf } from '../signal/quantileOf';
import { missingAt, pointAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/** Thigh plus shank as a share of the torso from hips to shoulders; Drillis & Contini, from memory: (.245 + .246) / .288. */
const legToTorso = 1.7;

export interface BodyHeights {
  /** Height of the middle of the hips and of the shoulders, share of leg length, any origin; unseen = last value. */
  hips: Float64Array;
  shoulders: Float64Array;
}

/** @param legLengthPx  null where the leg was never seen; the size is then inferred from the torso */
export function bodyHeights(points: SmoothPoints, legLengthPx: number | null): BodyHeights {
  const hipY = middleY(points.point('left_hip'), points.point('right_hip'), points.timesMs.length);
  const shoulderY = middleY(
    points.point('left_shoulder'),
    points.point('right_shoulder'),
    points.timesMs.length,
  );
  const torsoPx = medianOf(hipY.map((y, i) => Math.abs(y - shoulderY[i]!))) ?? 0;
  const scalePx = legLengthPx ?? (torsoPx > 0 ? torsoPx * legToTorso : 1);
  return { hips: hipY.map((y) => -y / scalePx), shoulders: shoulderY.map((y) => -y / scalePx) };
}

function middleY(left: SmoothPoint, right: SmoothPoint, samples: number): Float64Array {
  const y = new Float64Array(samples);
  let last: number | null = null;
  for (let i = 0; i < samples; i++) {
    if (missingAt([left, right], i) === 0) {
      const here = (pointAt(left, i).y + pointAt(right, i).y) / 2;
      if (last === null) y.fill(here, 0, i);
      last = here;
    }
    y[i] = last ?? 0;
  }
  return y;
}
