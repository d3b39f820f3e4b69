import { clamp } from '#core/clamp';
import type { Box } from './legBox';

/** Where a whole picture lies on a stage, screen px from the stage's corner; it may reach beyond the stage. */
export interface PlacedPicture {
  left: number;
  top: number;
  width: number;
  height: number;
}

/**
 * Lays a picture on a stage so that a part of it is as large as the stage allows, with no empty border where the
 * picture could fill it.
 *
 * @param part   what must be seen, picture px
 * @param stage  screen px
 */
export function placePicture(
  picture: { widthPx: number; heightPx: number },
  part: Box,
  stage: { width: number; height: number },
): PlacedPicture {
  const scale = Math.min(stage.width / part.width, stage.height / part.height);
  const width = Math.floor(picture.widthPx * scale);
  const height = Math.floor(picture.heightPx * scale);
  return {
    left: start(stage.width, width, (part.x + part.width / 2) * scale),
    top: start(stage.height, height, (part.y + part.height / 2) * scale),
    width,
    height,
  };
}

/** Start of a picture on one axis, so that a point of it comes to the stage's middle as far as it can. */
function start(stagePx: number, picturePx: number, middlePx: number): number {
  if (picturePx <= stagePx) return (stagePx - picturePx) / 2;
  return clamp(stagePx / 2 - middlePx, stagePx - picturePx, 0);
}
