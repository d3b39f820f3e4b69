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

/** Points are looked at again and again while the hips settle. */
const known = new WeakMap<SmoothPoint, PictureJoint>();

/** A point from the picture's centre; computed once, since a point belongs to one picture. */
export function fromCentre(point: SmoothPoint, { widthPx, heightPx }: PictureSize): PictureJoint {
  const joint = known.get(point) ?? {
    xPx: point.xPx.values.map((x) => x - widthPx / 2),
    yPx: point.yPx.values.map((y) => y - heightPx / 2),
  };
  known.set(point, joint);
  return joint;
}

export function allSeen(points: readonly SmoothPoint[], samples: number): Uint8Array {
  const seen = new Uint8Array(samples);
  for (let i = 0; i < samples; i++) if (missingAt(points, i) === 0) seen[i] = 1;
  return seen;
}

/** The hip, placed half the usual pelvis width to the side of the middle of both hips. */
function rigidHip(hip: PictureJoint, other: PictureJoint, seen: Uint8Array): PictureJoint {
  const samples = seen.length;
  const [halvesPx, seenPx] = [new Float64Array(samples), new Float64Array(samples)];
  let count = 0;
  for (let i = 0; i < samples; i++) {
    halvesPx[i] = (hip.xPx[i]! - other.xPx[i]!) / 2;
    if (seen[i] !== 0) seenPx[count++] = halvesPx[i]!;
  }
  const halfPx = medianOf(seenPx.subarray(0, count));
  if (halfPx === undefined) return hip;
  const xPx = new Float64Array(samples);
  for (let i = 0; i < samples; i++)
    xPx[i] = seen[i] === 0 ? hip.xPx[i]! : hip.xPx[i]! - halvesPx[i]! + halfPx;
  return { ...hip, xPx };
}
