import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import type { Point } from '#core/geometry/point';
import type { FrameLeg } from '#core/keypoints/frameLeg';
import type { Side } from '#core/protocol/side';

/** How far one press of an arrow key moves a joint, px of the picture; with Shift ten times as far. */
export const stepPx = 0.5;
const fastTimes = 10;

const ways: Record<string, Point> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

/**
 * Where a key moves a joint.
 *
 * @param from  px of the picture
 * @returns  null for a key that moves nothing
 */
export function jointStep(from: Point, key: string, isFast: boolean): Point | null {
  const way = ways[key];
  if (way === undefined) return null;
  const by = stepPx * (isFast ? fastTimes : 1);
  return { x: from.x + way.x * by, y: from.y + way.y * by };
}

/**
 * How much the knee angle in the picture changes if joints of the leg are moved.
 *
 * @returns  degrees, inward positive; null where a joint of either is unseen
 */
export function angleChangeDeg(before: FrameLeg, after: FrameLeg, side: Side): number | null {
  const [was, is] = [before, after].map(({ hip, knee, ankle }) =>
    hip === null || knee === null || ankle === null ? null : kneeProjectionAngleDeg(hip, knee, ankle, side),
  );
  return was === null || is === null || was === undefined || is === undefined ? null : is - was;
}
