import { medianOf } from '../signal/quantileOf';
import type { PictureJoint } from './liftLeg';

/** Heel to toe as a share of shank length; Drillis & Contini, from memory: foot .152, shank .246 of body height. */
const footToShank = 0.152 / 0.246;

/**
 * Direction of a foot on the floor, told from how far its toe stands beside its heel in the picture.
 *
 * The toe that the network marks is the big toe, which stands inward of the foot's axis by about as much as the foot
 * usually turns out, so that a usual stance reads straight ahead.
 *
 * @param when  1 where the foot counts
 * @param shankPx  standing length of the shank, px
 * @returns  degrees, positive = to the picture's right; null where the foot is never seen
 */
export function footHeadingDeg(
  heel: PictureJoint,
  toe: PictureJoint,
  when: Uint8Array,
  shankPx: number,
): number | null {
  const offsetsPx: number[] = [];
  for (let i = 0; i < when.length; i++) if (when[i] !== 0) offsetsPx.push(toe.xPx[i]! - heel.xPx[i]!);
  const offsetPx = medianOf(offsetsPx);
  if (offsetPx === undefined) return null;
  const sine = Math.max(-1, Math.min(1, offsetPx / (shankPx * footToShank)));
  return (Math.asin(sine) * 180) / Math.PI;
}
