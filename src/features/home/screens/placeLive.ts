import { placePicture, type PlacedPicture } from '#ui/drawing/placePicture';

/** At most this share of the live picture may be cut off to fill the stage; feet must not go. */
const mostCut = 0.18;

/**
 * Lays the live picture on its stage: it fills the stage where little of it is cut off for that, and else is shown
 * whole.
 */
export function placeLive(
  { widthPx, heightPx }: { widthPx: number; heightPx: number },
  stage: { width: number; height: number },
): PlacedPicture {
  const whole = { x: 0, y: 0, width: widthPx, height: heightPx };
  if (stage.width === 0 || stage.height === 0) return { left: 0, top: 0, width: 0, height: 0 };
  const aspect = stage.width / stage.height;
  const shownWidth = Math.min(widthPx, heightPx * aspect);
  // Head and shoes are never cut off, only the sides.
  const isFilled = shownWidth >= (1 - mostCut) * widthPx;
  const part = isFilled ? { ...whole, x: (widthPx - shownWidth) / 2, width: shownWidth } : whole;
  return placePicture({ widthPx, heightPx }, part, stage);
}
