import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { CloserFrame } from '#core/looks/closerLook';

/** Finds a person's joints in pictures, one after the other. */
export interface PoseTracker {
  /** Loads a model; a second call with the same model costs nothing. */
  load(model: PoseModel): Promise<PoseDevice>;
  /** Starts a new recording: nothing is carried over from the last picture. */
  reset(): Promise<void>;
  /**
   * Joints in one picture; the picture is taken over and closed.
   *
   * @param scale  px of the displayed video for one px of the picture
   * @returns null where no person is found
   */
  estimate(picture: ImageBitmap, scale: number, timeMs: number): Promise<KeypointRow | null>;
  /** Stops the worker; calls still in progress are rejected. */
  close(): void;
}

/** All that is seen in one picture. */
export interface CarefulEstimate {
  /** As estimate() gives it. */
  row: KeypointRow | null;
  /** Null where there is too little to go by. */
  closer: Omit<CloserFrame, 'frame'> | null;
}

/** A tracker that can also look at pictures more closely: along the way, or again when their joints are known. */
export interface CarefulTracker extends PoseTracker {
  /** Loads the second network; a second call costs nothing. */
  loadSecond(): Promise<void>;
  /** As estimate() does, and looks at the same picture more closely at once. */
  estimateCloser(picture: ImageBitmap, scale: number, timeMs: number): Promise<CarefulEstimate>;
  /**
   * Looks at a picture again, in its mirror image and with the second network; the picture is taken over and closed.
   *
   * @param usual  what estimate() found in the same picture
   * @param isAlone  where the picture before was of another moment
   * @returns null where there is too little to go by
   */
  lookCloser(
    picture: ImageBitmap,
    scale: number,
    timeMs: number,
    usual: KeypointRow,
    isAlone: boolean,
  ): Promise<Omit<CloserFrame, 'frame'> | null>;
}
