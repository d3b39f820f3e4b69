import { otherSide, type Side } from '../protocol/side';
import { medianOf } from '../signal/quantileOf';
import type { PictureJoint, PictureLeg } from '../view/liftLeg';
import { missingAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

export interface PictureSize {
  widthPx: number;
  heightPx: number;
}

/**
 * A leg as seen, from the picture's centre.
 *
 * The network moves the hips apart and together with the posture; a pelvis does not (docs/view.md gives the
 * effect).
 */
export function pictureLeg(points: SmoothPoints, side: Side, size: PictureSize): PictureLeg {
  const samples = points.timesMs.length;
  const [hip, knee, ankle] = (['hip', 'knee', 'ankle'] as const).map((joint) =>
    points.point(`${side}_${joint}`),
  ) as [SmoothPoint, SmoothPoint, SmoothPoint];
  const hips = [hip, points.point(`${otherSide(side)}_hip`)] as const;
  return {
    hip: rigidHip(fromCentre(hips[0], size), fromCentre(hips[1], size), allSeen(hips, samples)),
    knee: fromCentre(knee, size),
    ankle: fromCentre(ankle, size),
    seen: allSeen([hip, knee, ankle], samples),
  };
}

export function fromCentre({ xPx, yPx }: SmoothPoint, { widthPx, heightPx }: PictureSize): PictureJoint {
  return { xPx: xPx.values.map((x) => x - widthPx / 2), yPx: yPx.values.map((y) => y - heightPx / 2) };
}

export function allSeen(points: readonly SmoothPoint[], samples: number): Uint8Array {
  const seen = new Uint8Array(samples);
  for (let i = 0; i < samples; i++) if (missingAt(points, i) === 0) seen[i] = 1;
  return seen;
}

/** The hip, placed half the usual pelvis width to the side of the middle of both hips. */
function rigidHip(hip: PictureJoint, other: PictureJoint, seen: Uint8Array): PictureJoint {
  const halvesPx = hip.xPx.map((x, i) => (x - other.xPx[i]!) / 2);
  const halfPx = medianOf(halvesPx.filter((_, i) => seen[i] !== 0));
  if (halfPx === undefined) return hip;
  return { ...hip, xPx: hip.xPx.map((x, i) => (seen[i] === 0 ? x : x - halvesPx[i]! + halfPx)) };
}
