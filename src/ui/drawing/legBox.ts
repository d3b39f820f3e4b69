import { clamp } from '#core/clamp';
import type { Point } from '#core/geometry/point';
import type { FrameLeg } from '#core/keypoints/frameLeg';

export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

/** Room left around the leg, as a share of its height in the picture. */
const margin = 0.18;

/**
 * The part of the picture that shows a leg: all its seen joints with room around them, in a given shape, moved (and
 * where needed cut) to lie within the picture.
 *
 * Frame:   picture px
 * @param aspect  width over height of the wanted shape, above 0
 * @returns  the whole picture where no joint is seen
 */
export function legBox(leg: FrameLeg, picture: { widthPx: number; heightPx: number }, aspect: number): Box {
  const seen = Object.values(leg).filter((point): point is Point => point !== null);
  if (seen.length === 0) return { x: 0, y: 0, width: picture.widthPx, height: picture.heightPx };
  const xs = seen.map(({ x }) => x);
  const ys = seen.map(({ y }) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const wanted = Math.max(bottom - top, (right - left) / aspect, 1) * (1 + 2 * margin);
  const height = Math.min(wanted, picture.heightPx, picture.widthPx / aspect);
  const width = height * aspect;
  return {
    x: clamp((left + right - width) / 2, 0, picture.widthPx - width),
    y: clamp((top + bottom - height) / 2, 0, picture.heightPx - height),
    width,
    height,
  };
}
