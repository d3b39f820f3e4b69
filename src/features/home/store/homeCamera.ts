import type { Camera, CameraWish } from '#device/camera/camera';
import { CameraProblem, cameraWayOut } from '#device/camera/cameraProblem';
import type { PoseModel } from '#core/keypoints/poseModel';
import { decideLive } from '#device/live/decideLive';
import type { LiveFrame } from '#device/live/liveFrame';
import type { PictureFeed } from '#device/live/pictureFeed';
import { startLiveLoop, type LiveLoop, type LiveRates } from '#device/live/startLiveLoop';
import type { Brightness } from '../placing/placing';
import type { PoseTracker } from '#device/pose/poseTracker';
import type { SetStart } from '#device/storage/keptSchemas';
import { explainProblem } from '#shell/explainProblem';
import type { HomeAdapters } from './homeAdapters';
import type { HomeState } from './homeState';

/** The camera of a home session with what follows the joints in its pictures. */
export interface HomeCamera {
  /** Asks for a camera, tries out the device, and follows the joints from then on. Never rejects. */
  open(wish: CameraWish): Promise<void>;
  stream(): MediaStream | null;
  /** With which network the joints are found; null before the camera is on. */
  model(): SetStart['model'] | null;
  /** No picture is looked at until resume. */
  pause(): void;
  resume(): void;
  rates(): LiveRates;
  /** Of a picture of the last seconds; undefined where none could be read. */
  brightness(): Brightness | undefined;
  close(): void;
}

interface CameraParts {
  adapters: HomeAdapters;
  set: (change: Partial<HomeState>) => void;
  get: () => HomeState;
  onFrame: (frame: LiveFrame) => void;
  /** Hears of the camera's coming (true) and going (false). */
  onWorks: (works: boolean) => void;
}

/** How often the picture's brightness is read, ms. */
const brightnessEveryMs = 1000;
/** A tracker that fails twice within this time is not started a third time, ms. */
const failsAgainMs = 20_000;

export function createHomeCamera({ adapters, set, get, onFrame, onWorks }: CameraParts): HomeCamera {
  let camera: Camera | null = null;
  let tracker: PoseTracker | null = null;
  let model: SetStart['model'] | null = null;
  let loop: LiveLoop | null = null;
  let isPaused = false;
  let failedMs = -Infinity;
  let brightness: Brightness | undefined;
  /** Raised with every opening and closing: what an earlier one still had under way counts no more. */
  let turn = 0;
  let stops: (() => void)[] = [];

  const letGo = () => {
    turn++;
    stops.forEach((stop) => stop());
    stops = [];
    loop?.stop();
    loop = null;
    camera?.close();
    camera = null;
    brightness = undefined;
  };
  const freeTracker = () => {
    tracker?.close();
    tracker = null;
    model = null;
  };
  const fail = (error: unknown) => {
    letGo();
    const isCamera = error instanceof CameraProblem;
    const sentence = isCamera
      ? error.message
      : `${explainProblem(error, 'be followed').sentence} ${cameraWayOut}`;
    set({ camera: { state: 'problem', kind: isCamera ? error.kind : 'tracking', sentence } });
    if (get().pace.state === 'checking') set({ pace: { state: 'unknown' } });
    if (!isCamera) freeTracker();
    onWorks(false);
  };

  const listCameras = async () => {
    const cameras = await adapters.listCameras().catch(() => null);
    if (cameras !== null) set({ cameras });
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

  const loadModel = async (size: PoseModel) => {
    tracker ??= adapters.createTracker();
    const { backend } = await tracker.load(size);
    model = { name: 'BlazePose', size, weights: adapters.weights, backend };
  };

  /** Two seconds with the full model and, where it is too slow, two with the lite one; once in a home session. */
  const checkPace = async (stream: MediaStream, mine: number) => {
    const { pace } = get();
    if (pace.state === 'known') return loadModel(pace.model);
    set({ pace: { state: 'checking' } });
    tracker ??= adapters.createTracker();
    const { decision } = await adapters.checkDevice({ openFeed: () => adapters.openFeed(stream), tracker });
    if (mine !== turn) return;
    set({ pace: { state: 'known', ...decision } });
    await loadModel(decision.model);
  };

  const follow = (stream: MediaStream, mine: number) => {
    const current = tracker;
    if (current === null) return;
    loop = startLiveLoop({
      feed: watchedFeed(stream),
      tracker: current,
      onFrame,
      now: adapters.clockMs,
    });
    if (isPaused) loop.pause();
    loop.ended.catch(async (error: unknown) => {
      if (mine !== turn) return;
      // A new worker may do better; its second failure is told.
      const nowMs = adapters.clockMs();
      if (nowMs - failedMs < failsAgainMs) return fail(error);
      failedMs = nowMs;
      const size = model?.size ?? 'lite';
      freeTracker();
      try {
        await loadModel(size);
        if (mine === turn) follow(stream, mine);
      } catch (again) {
        if (mine === turn) fail(again);
      }
    });
  };

  return {
    async open(wish) {
      letGo();
      const mine = turn;
      set({ camera: { state: 'asking' } });
      try {
        const opened = await adapters.openCamera(wish);
        if (mine !== turn) return opened.close();
        camera = opened;
        stops.push(opened.onEnded(fail));
        stops.push(adapters.watchCameras(() => void listCameras()));
        const { deviceId, label, facing, widthPx, heightPx } = opened.facts;
        const isMirrored = facing !== 'back';
        set({ camera: { state: 'on', camera: { deviceId, label, facing }, widthPx, heightPx, isMirrored } });
        void listCameras();
        await checkPace(opened.stream, mine);
        if (mine !== turn) return;
        follow(opened.stream, mine);
        onWorks(true);
      } catch (error) {
        if (mine === turn) fail(error);
      }
    },
    stream: () => camera?.stream ?? null,
    model: () => model,
    pause() {
      isPaused = true;
      loop?.pause();
    },
    resume() {
      isPaused = false;
      loop?.resume();
    },
    rates: () => loop?.rates() ?? { seenFps: 0, trackedFps: 0 },
    brightness: () => brightness,
    close() {
      letGo();
      freeTracker();
      isPaused = false;
      set({ camera: { state: 'off' } });
    },
  };
}

/** What to tell of a device that became too slow on the way. */
export function slowedSentence(trackedFps: number): string | null {
  return decideLive(trackedFps, trackedFps)?.sentence ?? null;
}
