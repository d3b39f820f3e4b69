import type { KeypointName } from '../keypoints/keypointNames';
import type { KeypointRow } from '../keypoints/keypointTrack';

/** The joints that the second network is asked for, in the order of its rows. */
export const secondJoints = [
  'left_hip',
  'right_hip',
  'left_knee',
  'right_knee',
  'left_ankle',
  'right_ankle',
] as const satisfies readonly KeypointName[];

/** x, y (px of the displayed video) and score of each of the second network's joints, interleaved; length 18. */
export type SecondRow = Float32Array;

/** One frame looked at again: in its mirror image, and by a second network. All is mirrored back. */
export interface CloserFrame {
  /** Place of the frame in the track. */
  frame: number;
  /** What the first network found in the mirror image; null where it found nobody. */
  mirrored: KeypointRow | null;
  second: SecondRow;
  secondMirrored: SecondRow;
}
