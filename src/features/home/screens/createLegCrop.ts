import { median } from 'd3-array';
import type { Point } from '#core/geometry/point';
import { rowLeg } from '#core/keypoints/frameLeg';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { otherSide, type Side } from '#core/protocol/side';
import type { Box } from '#ui/drawing/legBox';

/** Finds the part of the picture that the working leg needs, from hips to shoes. */
export interface LegCrop {
  /**
   * @returns  the part to show, picture px; the same one as before as long as the leg stays in it; null as long as the
   *   leg was not seen well
   */
  push(row: KeypointRow | null, picture: { widthPx: number; heightPx: number }): Box | null;
}

/** Pictures over which the leg's place is taken, so that one misread joint moves nothing. */
const pictures = 9;
/** Room left round the leg, as a share of its height: enough that small movements don't move the picture. */
const room = 0.12;
/** A part less high than this share of the picture would show its pixels. */
const leastHeightShare = 0.3;

/** The part only grows: a picture that follows the leg could not show how it moves. */
export function createLegCrop(side: Side): LegCrop {
  const edges: number[][] = [];
  let shown: Box | null = null;
  return {
    push(row, picture) {
      const seen = row === null ? null : legEdges(row, side);
      if (seen === null) return shown;
      edges.push(seen);
      if (edges.length > pictures) edges.shift();
      if (edges.length < pictures) return shown;
      const [left, top, right, bottom] = [0, 1, 2, 3].map((edge) => median(edges, (one) => one[edge])!);
      const leg = { x: left!, y: top!, width: right! - left!, height: bottom! - top! };
      if (shown === null || !holds(shown, leg)) shown = within(union(shown, padded(leg)), picture);
      return shown;
    },
  };
}

/** Left, top, right and bottom of the working leg with both hips, px; null where hip or ankle is unseen. */
function legEdges(row: KeypointRow, side: Side): number[] | null {
  const leg = rowLeg(row, side);
  if (leg.hip === null || leg.ankle === null) return null;
  const points = [...Object.values(leg), rowLeg(row, otherSide(side)).hip];
  const seen = points.filter((point): point is Point => point !== null);
  const [xs, ys] = [seen.map(({ x }) => x), seen.map(({ y }) => y)];
  return [Math.min(...xs), Math.min(...ys), Math.max(...xs), Math.max(...ys)];
}

function padded({ x, y, width, height }: Box): Box {
  const px = room * height;
  return { x: x - px, y: y - px, width: width + 2 * px, height: height + 2 * px };
}

function holds(outer: Box, inner: Box): boolean {
  const isWide = inner.x >= outer.x && inner.x + inner.width <= outer.x + outer.width;
  return isWide && inner.y >= outer.y && inner.y + inner.height <= outer.y + outer.height;
}

function union(a: Box | null, b: Box): Box {
  if (a === null) return b;
  const [x, y] = [Math.min(a.x, b.x), Math.min(a.y, b.y)];
  const right = Math.max(a.x + a.width, b.x + b.width);
  const bottom = Math.max(a.y + a.height, b.y + b.height);
  return { x, y, width: right - x, height: bottom - y };
}

/** High enough, and cut to the picture. */
function within(box: Box, { widthPx, heightPx }: { widthPx: number; heightPx: number }): Box {
  const missing = Math.max(0, leastHeightShare * heightPx - box.height) / 2;
  const top = Math.max(0, box.y - missing);
  const left = Math.max(0, box.x);
  return {
    x: left,
    y: top,
    width: Math.min(widthPx, box.x + box.width) - left,
    height: Math.min(heightPx, box.y + box.height + missing) - top,
  };
}
