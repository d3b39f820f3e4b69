import type { ViewSign } from '../exercises/exercise';

/**
 * Every possible reading: what tasks offer, what bends before the set showed, and what the person was asked
 * to do: to face the camera.
 */
export const viewCueNames = [
  'thighs',
  'feet',
  'stance-foot',
  'free-shank',
  'bends',
  'facing-camera',
] as const satisfies readonly (ViewSign | 'bends' | 'facing-camera')[];

/**
 * One estimate of how far the body is turned from the camera, read from the recording itself or from bends
 * before it.
 */
export interface ViewCue {
  name: (typeof viewCueNames)[number];
  /** Positive = the body's front points to the picture's right, degrees. */
  yawDeg: number;
  /** Usual error of such a reading, degrees (one standard deviation). */
  sdDeg: number;
}
