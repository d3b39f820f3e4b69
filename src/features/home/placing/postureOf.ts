import { keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { leastScore } from '#core/keypoints/observedPoint';
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
  const [hip, knee, ankle] = (['hip', 'knee', 'ankle'] as const).map((joint) =>
    pointOf(row, `${side}_${joint}`),
  );
  if (!hip || !knee || !ankle) return null;
  const shankPx = Math.hypot(ankle.x - knee.x, ankle.y - knee.y);
  if (shankPx === 0) return null;
  const share = Math.hypot(knee.x - hip.x, knee.y - hip.y) / shankPx;
  if (share > uprightShare) return 'standing';
  return share < seatedShare ? 'seated' : null;
}

function pointOf(row: KeypointRow, name: KeypointName): { x: number; y: number } | null {
  const at = keypointNames.indexOf(name) * 3;
  return row[at + 2]! >= leastScore ? { x: row[at]!, y: row[at + 1]! } : null;
}
