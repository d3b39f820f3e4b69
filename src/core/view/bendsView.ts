import type { Side } from '../protocol/side';

/**
 * How the body was turned in two easy two-legged bends before a set: both thighs there are more certain than
 * one foot later.
 *
 * Valid only while the camera has not moved since: not carried, tilted or turned by even a hand's breadth.
 */
export interface BendsView {
  /** How far the body was turned, degrees; positive = its front pointed to the picture's right. */
  yawDeg: number;
  /** One standard deviation, degrees. */
  sdDeg: number;
  /** How each foot pointed in the picture while standing, degrees, as footHeadingDeg reads it; null where unseen. */
  footDeg: Record<Side, number | null>;
}
