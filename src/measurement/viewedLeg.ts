import { medianOf } from '../signal/quantileOf';
import { otherSide, type Side } from '../protocol/side';
import { liftLeg, segmentsPx, type PictureJoint } from '../view/liftLeg';
import type { ViewedLeg } from '../view/readViewCues';
import { missingAt, type SmoothPoint, type SmoothPoints } from './smoothPoints';

export interface PictureSize {
  widthPx: number;
  heightPx: number;
}

/**
 * A leg as seen and as lifted to three dimensions.
 *
 * The network moves the hips apart and together with the posture; a pelvis does not (docs/view.md shows what this is
 * worth).
 *
 * @returns  null where the leg was never seen whole
 */
export function viewedLeg(
  points: SmoothPoints,
  side: Side,
  size: PictureSize,
  focalPx: number,
): ViewedLeg | null {
  const samples = points.timesMs.length;
  const [hip, knee, ankle, heel, toe] = (['hip', 'knee', 'ankle', 'heel', 'foot_index'] as const).map(
    (joint) => points.point(`${side}_${joint}`),
  ) as [SmoothPoint, SmoothPoint, SmoothPoint, SmoothPoint, SmoothPoint];
  const seen = allSeen([hip, knee, ankle], samples);
  const hips = [hip, points.point(`${otherSide(side)}_hip`)] as const;
  const picture = {
    hip: rigidHip(fromCentre(hips[0], size), fromCentre(hips[1], size), allSeen(hips, samples)),
    knee: fromCentre(knee, size),
    ankle: fromCentre(ankle, size),
    seen,
  };
  const segments = segmentsPx(picture);
  if (segments === null) return null;
  return {
    picture,
    segments,
    lifted: liftLeg(picture, segments, focalPx),
    heel: fromCentre(heel, size),
    toe: fromCentre(toe, size),
    footSeen: allSeen([heel, toe], samples),
    jitter: Math.max(hip.jitterPx, knee.jitterPx, ankle.jitterPx) / segments.shank,
  };
}

function fromCentre({ xPx, yPx }: SmoothPoint, { widthPx, heightPx }: PictureSize): PictureJoint {
  return { xPx: xPx.values.map((x) => x - widthPx / 2), yPx: yPx.values.map((y) => y - heightPx / 2) };
}

function allSeen(points: readonly SmoothPoint[], samples: number): Uint8Array {
  const seen = new Uint8Array(samples);
  for (let i = 0; i < samples; i++) if (missingAt(points, i) === 0) seen[i] = 1;
  return seen;
}

/** The hip set half the usual pelvis width beside the middle of both hips. */
function rigidHip(hip: PictureJoint, other: PictureJoint, seen: Uint8Array): PictureJoint {
  const halvesPx = hip.xPx.map((x, i) => (x - other.xPx[i]!) / 2);
  const halfPx = medianOf(halvesPx.filter((_, i) => seen[i] !== 0));
  if (halfPx === undefined) return hip;
  return { ...hip, xPx: hip.xPx.map((x, i) => (seen[i] === 0 ? x : x - halvesPx[i]! + halfPx)) };
}
