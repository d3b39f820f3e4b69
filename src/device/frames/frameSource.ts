/** Facts about a video file that a result depends on. */
export interface VideoFacts {
  fileName: string;
  fileBytes: number;
  /** As the container names it, for example 'avc1.64001f'; 'unknown' where only the video element can read it. */
  codec: string;
  /** Picture size as displayed (rotation applied), px. */
  widthPx: number;
  heightPx: number;
  durationMs: number;
  /** Mean frame rate over the file, Hz. */
  frameRateHz: number;
  /** How many frames are expected; the count at the end may differ by a few. */
  expectedFrames: number;
  readBy: 'webcodecs' | 'video element';
}

/** One picture of a video, scaled for the pose network. The receiver closes it. */
export interface Frame {
  /** Presentation time, ms from the start of the video. */
  timeMs: number;
  picture: ImageBitmap;
  /** px of the displayed video for one px of the picture. */
  scale: number;
}

/** A video opened for reading. */
export interface FrameSource {
  readonly facts: VideoFacts;
  /**
   * Frames in order of presentation.
   *
   * @param maxHeightPx  pictures are scaled down to this height; smaller videos are not scaled
   * @param afterMs  only frames later than this; all where left out
   * @param isWanted  only frames at these times; all where left out
   */
  frames(
    maxHeightPx: number,
    afterMs?: number,
    isWanted?: (timeMs: number) => boolean,
  ): AsyncGenerator<Frame, void, void>;
  /** Frees decoder and file; frames() in progress end with an error. */
  close(): void;
}

/** Opens a file for reading; throws a Problem with a clear sentence where it can't. */
export type OpenFrameSource = (file: File) => Promise<FrameSource>;
