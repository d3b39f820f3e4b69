import { distancePx } from '#core/geometry/point';
import { rowLeg } from '#core/keypoints/frameLeg';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { Side } from '#core/protocol/side';

/** A thigh that looks longer than this share of the shank is upright; one that looks shorter than the other points at
 * the camera. Thigh and shank are about equally long; between the two shares it can't be told. */
const uprightShare = 0.85;
const seatedShare = 0.65;

/**
 * Whether a person stands or sits, told from one picture taken from the front, by how long the thigh looks.
 *
 * @param side  the leg that is looked at: the one in front, whose shank is upright
 * @returns null where it can't be told
 */
export function postureOf(row: KeypointRow, side: Side): 'seated' | 'standing' | null {
  const { hip, knee, ankle } = rowLeg(row, side);
  if (hip === null || knee === null || ankle === null) return null;
  const shankPx = distancePx(knee, ankle);
  if (shankPx === 0) return null;
  const share = distancePx(hip, knee) / shankPx;
  if (share > uprightShare) return 'standing';
  return share < seatedShare ? 'seated' : null;
}
