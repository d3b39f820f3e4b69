import { cumsum, median } from 'd3-array';

/** Rows drawn above and below those in sight, so that scrolling finds them there. */
const spareRows = 4;
/** A table of no more rows than these is drawn whole. */
const fewestDrawn = 16;

/**
 * Where each row begins, and after them where the last one ends.
 *
 * @param heightsPx  of each row, px; undefined for a row not drawn yet, which is given the median height of
 *                   the others
 * @returns          px below the first row's upper edge, one more than there are rows
 */
export function rowTops(heightsPx: readonly (number | undefined)[]): readonly number[] {
  const usualPx = median(heightsPx.filter((px) => px !== undefined)) ?? 0;
  return [0, ...cumsum(heightsPx, (px) => px ?? usualPx)];
}

/**
 * Which rows to draw for those in sight between two heights: from the first one up to, but not including, the
 * other.
 *
 * @param topsPx  what `rowTops` gives
 * @param fromPx  upper edge of what is in sight, px below the first row's upper edge; may lie outside the table
 * @param toPx    its lower edge
 */
export function rowWindow(
  topsPx: readonly number[],
  fromPx: number,
  toPx: number,
): { from: number; to: number } {
  const rows = topsPx.length - 1;
  const firstSeen = topsPx.findIndex((_, row) => row === rows || topsPx[row + 1]! > fromPx);
  const from = Math.max(0, Math.min(firstSeen - spareRows, rows - fewestDrawn));
  const firstBelow = topsPx.findIndex((topPx, row) => row === rows || topPx >= toPx);
  return { from, to: Math.min(rows, Math.max(firstBelow + spareRows, from + fewestDrawn)) };
}
