import type { Need } from './needs';

/** How to get ready for an exercise alone; in the sentences, `{side}` is the working side and `{other}` the other one. */
export interface Preparation {
  needs: readonly Need[];
  /** What to put where, and how to stand, in order. */
  steps: readonly string[];
  /** Where the camera stands; null where none is needed. */
  camera: string | null;
  /** How a set begins; 'as-shown' where none of it can be seen from outside. */
  start: 'seated' | 'standing' | 'as-shown';
  /** Said before the countdown. */
  startLine: string;
  /**
   * Whether it begins with two easy two-legged bends: where the person stands on one foot, its own movement shows
   * little of how the body is turned (docs/view.md).
   */
  easyBends: boolean;
}

// Common practice, no source. How deep, how high and how fast is the treating professional's to say.
export const cameraInFront =
  'Put the camera two to three metres in front of you, upright and level, at the height of your hips or a little ' +
  'below. Both feet, and your head, must be in the picture.';
export const faceCamera = 'Face the camera squarely: both hips and both shoulders equally far from it.';
export const chairPlace = 'The chair stands with its back to the wall, its front to the camera.';
