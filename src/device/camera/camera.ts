import type { CameraProblem } from './cameraProblem';

/** Which camera is wished for; without a device the one that faces this way, where the device has it. */
export type CameraWish = { facing: CameraFacing } | { deviceId: string };

/** 'front' looks at whoever looks at the screen. */
export type CameraFacing = 'front' | 'back';

/** A camera that can be chosen. */
export interface CameraChoice {
  deviceId: string;
  /** Its own name; 'Camera 2' and so on as long as the camera was never allowed. */
  label: string;
  /** Null where neither the system nor the name tells. */
  facing: CameraFacing | null;
}

/** What the camera gives, as the browser tells; pictures may come turned, so their own size counts. */
export interface CameraFacts extends CameraChoice {
  widthPx: number;
  heightPx: number;
  /** 0 where the browser does not tell. */
  frameRateHz: number;
}

/** A camera that runs. */
export interface Camera {
  readonly stream: MediaStream;
  readonly facts: CameraFacts;
  /**
   * Hears of the camera's end: unplugged, taken by a call, no longer allowed. Not of close().
   *
   * @returns the way to stop listening
   */
  onEnded(listener: (problem: CameraProblem) => void): () => void;
  /** Hears when the camera stops giving pictures for a while (true), and when it gives them again (false). */
  onMuted(listener: (muted: boolean) => void): () => void;
  /** Switches the camera off. */
  close(): void;
}
