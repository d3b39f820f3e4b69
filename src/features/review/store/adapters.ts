import type { OpenFrameSource } from '#device/frames/frameSource';
import type { PoseTracker } from '#device/pose/poseTracker';

/** What the app needs from the world around it; tests hand in plain objects. */
export interface Adapters {
  openFrameSource: OpenFrameSource;
  /** Starts a pose tracker; asked for again after one was stopped or failed. */
  createTracker: () => PoseTracker;
  /** The built-in example: its session document as text, and its video. */
  fetchExample: () => Promise<{ recordingText: string; video: File }>;
  /** Hands a text file to the person. */
  saveFile: (fileName: string, text: string) => void;
  /** Package and version that the network's weights come from. */
  weights: string;
  /** Who reviews on this device, kept between visits. */
  reviewer: { read: () => string; write: (name: string) => void };
  newId: () => string;
  now: () => Date;
  /** Calls once the page has drawn. */
  later: (call: () => void) => void;
}
