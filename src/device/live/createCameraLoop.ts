import type { Camera } from '../camera/camera';
import type { PoseTracker } from '../pose/poseTracker';
import type { LiveFrame } from './liveFrame';
import type { PictureFeed } from './pictureFeed';
import { startLiveLoop, type LiveLoop, type LiveRates } from './startLiveLoop';

/** One camera at a time, in whose pictures the joints are followed. */
export interface CameraLoop {
  /**
   * Lets an earlier camera go, opens another and follows the joints in its pictures. Never rejects.
   *
   * @param prepare  loads the tracker's model, once the camera runs; what it does after waiting is overtaken where
   *   `isCurrent` says no
   * @returns  whether the joints are followed: not where something failed, or a later opening or closing overtook it
   */
  open(
    openCamera: () => Promise<Camera>,
    prepare: (camera: Camera, isCurrent: () => boolean) => Promise<void>,
  ): Promise<boolean>;
  stream(): MediaStream | null;
  /** The one tracker, which stays from camera to camera. */
  tracker(): PoseTracker;
  freeTracker(): void;
  /** No picture is looked at until resume, of a later camera neither. */
  pause(): void;
  resume(): void;
  rates(): LiveRates;
  /** Whether pictures of a camera are looked at, or would be if they came. */
  isFollowing(): boolean;
  /** Lets the camera go for this reason. */
  fail(reason: unknown): void;
  /** Lets camera and tracker go. */
  close(): void;
}

export interface CameraLoopParts {
  openFeed: (stream: MediaStream) => PictureFeed;
  createTracker: () => PoseTracker;
  onFrame: (frame: LiveFrame) => void;
  /** Hears why there is no camera any more: a CameraProblem, or what the tracker or `prepare` failed with. */
  onFailed: (error: unknown) => void;
  /** Called whenever a camera is let go, while it still runs. */
  onLetGo?: () => void;
  /** Makes the tracker ready again after it failed; throws where that is given up. Left out, it always is. */
  revive?: (error: unknown) => Promise<void>;
  now?: () => number;
}

export function createCameraLoop({
  openFeed,
  createTracker,
  onFrame,
  onFailed,
  onLetGo = () => undefined,
  revive = (error) => Promise.reject(error as Error),
  now = () => performance.now(),
}: CameraLoopParts): CameraLoop {
  let camera: Camera | null = null;
  let stopHearing: (() => void) | null = null;
  let tracker: PoseTracker | null = null;
  let loop: LiveLoop | null = null;
  let isPaused = false;
  /** Bumped with every opening and closing: what an earlier one still had under way counts no more. */
  let turn = 0;

  const letGo = () => {
    turn++;
    stopHearing?.();
    stopHearing = null;
    loop?.stop();
    loop = null;
    onLetGo();
    camera?.close();
    camera = null;
  };
  const freeTracker = () => {
    tracker?.close();
    tracker = null;
  };
  const fail = (error: unknown) => {
    letGo();
    onFailed(error);
  };
  const follow = (stream: MediaStream, isCurrent: () => boolean) => {
    if (tracker === null) return;
    loop = startLiveLoop({ feed: openFeed(stream), tracker, onFrame, now });
    if (isPaused) loop.pause();
    loop.ended.catch(async (error: unknown) => {
      if (!isCurrent()) return;
      loop = null;
      try {
        await revive(error);
        if (isCurrent()) follow(stream, isCurrent);
      } catch (reason) {
        if (isCurrent()) fail(reason);
      }
    });
  };

  return {
    async open(openCamera, prepare) {
      letGo();
      const mine = turn;
      const isCurrent = () => mine === turn;
      try {
        const opened = await openCamera();
        if (!isCurrent()) {
          opened.close();
          return false;
        }
        camera = opened;
        stopHearing = opened.onEnded(fail);
        await prepare(opened, isCurrent);
        if (isCurrent()) follow(opened.stream, isCurrent);
      } catch (error) {
        if (isCurrent()) fail(error);
      }
      return isCurrent();
    },
    stream: () => camera?.stream ?? null,
    tracker: () => (tracker ??= createTracker()),
    freeTracker,
    pause() {
      isPaused = true;
      loop?.pause();
    },
    resume() {
      isPaused = false;
      loop?.resume();
    },
    isFollowing: () => loop !== null,
    fail,
    rates: () => loop?.rates() ?? { seenFps: 0, trackedFps: 0 },
    close() {
      letGo();
      freeTracker();
      isPaused = false;
    },
  };
}
