import type { PoseModel } from '#core/keypoints/poseModel';
import type { CameraWish } from '#device/camera/camera';
import { CameraProblem, cameraWayOut } from '#device/camera/cameraProblem';
import { createCameraLoop } from '#device/live/createCameraLoop';
import type { LiveFrame } from '#device/live/liveFrame';
import type { PictureFeed } from '#device/live/pictureFeed';
import type { LiveRates } from '#device/live/startLiveLoop';
import type { SetStart } from '#device/storage/keptSchemas';
import { explainProblem } from '#shell/explainProblem';
import type { Brightness } from '../placing/placing';
import type { HomeAdapters } from './homeAdapters';
import type { HomeCommon } from './homeState';

/** The camera of a home session with what follows the joints in its pictures. */
export interface HomeCamera {
  /** Asks for a camera, tries out the device, and follows the joints from then on. Never rejects. */
  open(wish: CameraWish): Promise<void>;
  stream(): MediaStream | null;
  /** With which network the joints are found; null before the camera is on. */
  model(): SetStart['model'] | null;
  /** No picture is tracked until resume. */
  pause(): void;
  resume(): void;
  rates(): LiveRates;
  /** Whether pictures are looked at, or would be if they came. */
  isFollowing(): boolean;
  /** Lets a camera go that gives no pictures, and says so. */
  giveUp(): void;
  /** Of a picture of the last seconds; undefined where none could be read. */
  brightness(): Brightness | undefined;
  close(): void;
}

interface CameraParts {
  adapters: HomeAdapters;
  set: (change: Partial<HomeCommon>) => void;
  get: () => HomeCommon;
  onFrame: (frame: LiveFrame) => void;
  /** Called when the camera starts (true) and stops (false). */
  onWorks: (works: boolean) => void;
}

/** How often the picture's brightness is read, ms. */
const brightnessEveryMs = 1000;
/** A tracker that fails twice within this time is not started a third time, ms. */
const failsAgainMs = 20_000;

export function createHomeCamera({ adapters, set, get, onFrame, onWorks }: CameraParts): HomeCamera {
  let model: SetStart['model'] | null = null;
  let failedMs = -Infinity;
  let brightness: Brightness | undefined;
  let stopListing: (() => void) | null = null;

  const freeTracker = () => {
    loop.freeTracker();
    model = null;
  };
  const loadModel = async (size: PoseModel) => {
    const { backend } = await loop.tracker().load(size);
    model = { name: 'BlazePose', size, weights: adapters.weights, backend };
  };

  /** Looks at a picture now and then on its way to the tracker. */
  const watchedFeed = (stream: MediaStream): PictureFeed => {
    const feed = adapters.openFeed(stream);
    let readMs = -Infinity;
    return {
      ...feed,
      async next() {
        const next = await feed.next();
        if (next !== null && next.timeMs - readMs >= brightnessEveryMs) {
          readMs = next.timeMs;
          brightness = adapters.readBrightness(next.picture) ?? undefined;
        }
        return next;
      },
    };
  };

  const loop = createCameraLoop({
    openFeed: watchedFeed,
    createTracker: adapters.createTracker,
    onFrame,
    now: adapters.clockMs,
    onLetGo() {
      stopListing?.();
      stopListing = null;
      brightness = undefined;
    },
    /** A new worker may do better; a second failure is reported. */
    async revive(error) {
      const nowMs = adapters.clockMs();
      if (nowMs - failedMs < failsAgainMs) throw error;
      failedMs = nowMs;
      const size = model?.size ?? 'lite';
      freeTracker();
      await loadModel(size);
    },
    onFailed(error) {
      const isCamera = error instanceof CameraProblem;
      const sentence = isCamera
        ? error.message
        : `${explainProblem(error, 'follow').sentence} ${cameraWayOut()}`;
      set({ camera: { state: 'problem', kind: isCamera ? error.kind : 'tracking', sentence } });
      if (get().pace.state === 'checking') set({ pace: { state: 'unknown' } });
      if (!isCamera) freeTracker();
      onWorks(false);
    },
  });

  const listCameras = async () => {
    const cameras = await adapters.listCameras().catch(() => null);
    if (cameras !== null) set({ cameras });
  };
  /** Two seconds with the full model and, where it is too slow, two with the lite one; once in a home session. */
  const checkPace = async (stream: MediaStream, isCurrent: () => boolean) => {
    const { pace } = get();
    if (pace.state === 'known') return loadModel(pace.model);
    set({ pace: { state: 'checking' } });
    const openFeed = () => adapters.openFeed(stream);
    const { decision } = await adapters.checkDevice({ openFeed, tracker: loop.tracker() });
    if (!isCurrent()) return;
    set({ pace: { state: 'known', ...decision } });
    await loadModel(decision.model);
  };

  return {
    async open(wish) {
      set({ camera: { state: 'asking' } });
      const isFollowed = await loop.open(
        () => adapters.openCamera(wish),
        async ({ stream, facts }, isCurrent) => {
          stopListing = adapters.watchCameras(() => void listCameras());
          const { deviceId, label, facing, widthPx, heightPx } = facts;
          const isMirrored = facing !== 'back';
          set({
            camera: { state: 'on', camera: { deviceId, label, facing }, widthPx, heightPx, isMirrored },
          });
          void listCameras();
          await checkPace(stream, isCurrent);
        },
      );
      if (isFollowed) onWorks(true);
    },
    stream: loop.stream,
    model: () => model,
    pause: loop.pause,
    resume: loop.resume,
    isFollowing: loop.isFollowing,
    giveUp: () => loop.fail(new CameraProblem('in-use')),
    rates: loop.rates,
    brightness: () => brightness,
    close() {
      loop.close();
      model = null;
      set({ camera: { state: 'off' } });
    },
  };
}
