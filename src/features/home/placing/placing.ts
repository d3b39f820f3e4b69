import type { QuietStand } from './quietStand';

/** The checks, most important first; they are reported in this order, one at a time. */
export const placingCheckIds = [
  'light',
  'one-person',
  'whole-body',
  'distance',
  'middle',
  'working-leg',
  'square',
  'camera-level',
  'camera-height',
  'frame-rate',
  'furniture',
] as const;
export type PlacingCheckId = (typeof placingCheckIds)[number];

/**
 * Where to: arrows are drawn over a picture that is mirrored as a mirror is. There the person's own left is on the left,
 * so that 'left' and 'turn-left' mean the person's own left and the picture's left alike.
 *
 * - left, right: the person steps that way
 * - closer, farther: the person steps towards the camera or away from it
 * - turn-left, turn-right: the person, or the foot that is named, turns that way about the upright axis
 * - up, down: the camera is raised or tipped up, lowered or tipped down, as the sentence says
 * - tip-left, tip-right: the camera is turned in its own plane, as the person sees it: counter-clockwise, clockwise
 */
export type PlacingArrow =
  | 'left'
  | 'right'
  | 'up'
  | 'down'
  | 'closer'
  | 'farther'
  | 'turn-left'
  | 'turn-right'
  | 'tip-left'
  | 'tip-right'
  | 'none';

export interface PlacingCheck {
  id: PlacingCheckId;
  /** 'move': something is to be changed. 'unknown': it can't be inferred from the picture. */
  state: 'good' | 'move' | 'unknown';
  /** Whether it is read off the picture, or can't be seen and is asked of the person. */
  source: 'seen' | 'asked';
  /** What to move and which way, to be spoken; left and right are always the person's own. */
  sentence: string;
  /** One or two short words where something is to be moved, so that a phone can show them large enough for 3 m. */
  short: string;
  arrow: PlacingArrow;
}

/** What is known besides the joints. */
export interface PlacingFacts {
  /** Brightness of the picture, see brightnessOf; left out where it was not read. */
  brightness?: Brightness | undefined;
  /** Pictures a second that are recorded, Hz; left out, it is inferred from the times of the joints. */
  cameraRateHz?: number | undefined;
  /** Whether the person has confirmed that chair or step stands where it should and can't slide. */
  isFurniturePlaced?: boolean | undefined;
  /** What the quiet stand showed, if there was one before. */
  quietStand?: Extract<QuietStand, { problem: null }> | undefined;
}

/** Brightness of a picture: 0 black to 1 white. */
export interface Brightness {
  mean: number;
  /** Standard deviation over the picture. */
  contrast: number;
}

export interface Placing {
  /** In order of importance. */
  checks: PlacingCheck[];
  /** Whether a set recorded now can be measured. */
  ready: boolean;
  /** The one to show and say now; null where nothing is left to do. */
  first: PlacingCheck | null;
}
