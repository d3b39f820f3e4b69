import { clamp } from '../clamp';
import { toDegrees } from '../geometry/degrees';
import { outwardSign, type Side } from '../protocol/side';
import { medianOf } from '../signal/quantileOf';
import type { PictureJoint } from './liftLeg';

/**
 * From the network's heel mark to its big-toe mark, as a share of shank length: the marks are .55 apart on rendered
 * figures (docs/view.md; a whole foot is .62, Drillis & Contini, from memory), and are pulled by a tenth towards a
 * foot that points as most do.
 */
const marksToShank = 0.5;
/**
 * The big toe, which the network marks, is this far inward of the foot's axis, degrees: rendered figures
 * whose feet turn out by 7 read 1.5 inward.
 */
const bigToeInwardDeg = 5.5;

/**
 * Direction of a foot's axis on the floor, inferred from how far its big toe is to the side of its heel in
 * the picture.
 *
 * @param heel  and `toe`: px from the picture's centre
 * @param when  1 where the foot counts
 * @param shankPx  standing length of the shank, px
 * @param focalPx  focal length, px
 * @returns  degrees from the camera's own direction, positive = to the picture's right; null where the foot is never
 *   seen
 */
export function footHeadingDeg(
  heel: PictureJoint,
  toe: PictureJoint,
  side: Side,
  when: Uint8Array,
  shankPx: number,
  focalPx: number,
): number | null {
  const [offsetsPx, placesPx]: [number[], number[]] = [[], []];
  for (let i = 0; i < when.length; i++) {
    if (when[i] === 0) continue;
    offsetsPx.push(toe.xPx[i]! - heel.xPx[i]!);
    placesPx.push((toe.xPx[i]! + heel.xPx[i]!) / 2);
  }
  const [offsetPx, placePx] = [medianOf(offsetsPx), medianOf(placesPx)];
  if (offsetPx === undefined || placePx === undefined) return null;
  const sine = clamp(offsetPx / (shankPx * marksToShank), -1, 1);
  // A foot off the middle of the picture is seen from its side by the angle of its bearing.
  const heading = Math.asin(sine) - Math.atan2(placePx, focalPx);
  return toDegrees(heading) + outwardSign(side) * bigToeInwardDeg;
}
