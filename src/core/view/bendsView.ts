import type { Side } from '../protocol/side';

/**
 * How the body stood to the camera in two easy two-legged bends before a set: what both thighs say there is surer than
 * what one foot says later.
 *
 * Only of use while the camera has not moved since: not carried, tipped or turned by a hand's breadth.
 */
export interface BendsView {
  /** How far the body was turned, degrees; positive = its front pointed to the picture's right. */
  yawDeg: number;
  /** One standard deviation, degrees. */
  sdDeg: number;
  /** How each foot pointed in the picture while standing, degrees, as footHeadingDeg reads it; null where unseen. */
  footDeg: Record<Side, number | null>;
}
