import type { PlacingArrow } from './placing';

const mirrorImages: Partial<Record<PlacingArrow, PlacingArrow>> = {
  left: 'right',
  right: 'left',
  'turn-left': 'turn-right',
  'turn-right': 'turn-left',
  'tip-left': 'tip-right',
  'tip-right': 'tip-left',
};

/**
 * An arrow for the picture as it is shown. Who watches a picture that is not mirrored stands behind the camera,
 * and sees the person's left on the right.
 */
export function arrowShown(arrow: PlacingArrow, isMirrored: boolean): PlacingArrow {
  return isMirrored ? arrow : (mirrorImages[arrow] ?? arrow);
}
