import type { Side } from '../protocol/side';
import { liftLeg, segmentsPx } from '../view/liftLeg';
import type { ViewedLeg } from '../view/measureViewCues';
import { allSeen, fromCentre, pictureLeg, type PictureSize } from './pictureLeg';
import type { SmoothPoints } from './smoothPoints';

/** Length of a leg in the picture while standing, px. */
export function legLengthPx({ segments }: Pick<ViewedLeg, 'segments'>): number {
  return segments.thigh + segments.shank;
}

/**
 * A leg as seen and as lifted to three dimensions.
 *
 * @param standing  1 a sample where the person stands; where left out, the longest apparent length is taken
 * @returns  null where the leg was never seen in full
 */
export function viewedLeg(
  points: SmoothPoints,
  side: Side,
  size: PictureSize,
  focalPx: number,
  standing?: Uint8Array,
): ViewedLeg | null {
  const picture = pictureLeg(points, side, size);
  const segments = segmentsPx(picture, standing);
  if (segments === null) return null;
  const [heel, toe] = [points.point(`${side}_heel`), points.point(`${side}_foot_index`)];
  const jitterPx = Math.max(
    ...(['hip', 'knee', 'ankle'] as const).map((joint) => points.point(`${side}_${joint}`).jitterPx),
  );
  return {
    picture,
    segments,
    lifted: liftLeg(picture, segments, focalPx),
    heel: fromCentre(heel, size),
    toe: fromCentre(toe, size),
    footSeen: allSeen([heel, toe], points.timesMs.length),
    jitter: jitterPx / segments.shank,
  };
}
