/** Size of a picture scaled down to a height, px; never enlarged, never below 1 px. */
export function scaledSize(
  widthPx: number,
  heightPx: number,
  maxHeightPx: number,
): { width: number; height: number } {
  const ratio = Math.min(1, maxHeightPx / heightPx);
  return {
    width: Math.max(1, Math.round(widthPx * ratio)),
    height: Math.max(1, Math.round(heightPx * ratio)),
  };
}
