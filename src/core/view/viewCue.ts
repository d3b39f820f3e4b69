import type { ViewSign } from '../exercises/exercise';

/** Every reading there can be: what tasks offer, what bends before the set showed, and what a person was told. */
export const viewCueNames = [
  'thighs',
  'feet',
  'stance-foot',
  'free-shank',
  'bends',
  'told-to-face-the-camera',
] as const satisfies readonly (ViewSign | 'bends' | 'told-to-face-the-camera')[];

/** One way of telling how far the body is turned from the camera, read off the recording itself or off bends before it. */
export interface ViewCue {
  name: (typeof viewCueNames)[number];
  /** Positive = the body's front points to the picture's right, degrees. */
  yawDeg: number;
  /** How far off such a reading usually is, degrees (one standard deviation). */
  sdDeg: number;
}
