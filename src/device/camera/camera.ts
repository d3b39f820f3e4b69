import type { CameraProblem } from './cameraProblem';

/** Which camera is wanted; without a device id, the one that faces this way, if there is one. */
export type CameraWish = { facing: CameraFacing } | { deviceId: string };

/** 'front' faces the person looking at the screen. */
export type CameraFacing = 'front' | 'back';

/** A camera that can be chosen. */
export interface CameraChoice {
  deviceId: string;
  /** Its own name; 'Camera 2' and so on until a camera has been allowed. */
  label: string;
  /** Null where neither the system nor the name says. */
  facing: CameraFacing | null;
}

/** What the camera delivers, according to the browser; pictures may come rotated, so their own size counts. */
export interface CameraFacts extends CameraChoice {
  widthPx: number;
  heightPx: number;
  /** 0 where the browser does not report it. */
  frameRateHz: number;
}

/** A running camera. */
export interface Camera {
  readonly stream: MediaStream;
  readonly facts: CameraFacts;
  /**
   * Called when the camera ends: unplugged, taken by a call, no longer allowed. Not after close().
   *
   * @returns a function that stops listening
   */
  onEnded(listener: (problem: CameraProblem) => void): () => void;
  /** Called when the camera pauses (true), and when it delivers pictures again (false). */
  onMuted(listener: (muted: boolean) => void): () => void;
  /** Switches the camera off. */
  close(): void;
}
