import type { KeypointRow } from '#core/keypoints/keypointTrack';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';

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
