import { vi } from 'vitest';
import { buildKeypointTrack, frameRow, type KeypointRow } from '#core/keypoints/keypointTrack';
import { viewFromBends } from '#core/measurement/viewFromBends';
import type { Camera, CameraWish } from '#device/camera/camera';
import { CameraProblem } from '#device/camera/cameraProblem';
import { RecordingProblem } from '#device/camera/recordingProblem';
import type { VideoRecording } from '#device/camera/recordVideo';
import type { DeviceCheck } from '#device/live/checkDevice';
import { createLiveSet } from '#device/live/createLiveSet';
import type { LivePicture, PictureFeed } from '#device/live/pictureFeed';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import type { GuidePhase } from '#features/home/guide/guideState';
import { createBackgroundMeasuring } from '#features/home/store/backgroundMeasuring';
import { createHome } from '#features/home/store/createHome';
import type { HomeAdapters } from '#features/home/store/homeAdapters';
import { freshParts, partOf } from '#features/home/store/homeState';
import { facts, fakeAdapters, fakeSource, fakeTracker, film } from '../../../../support/fakeAdapters';
import { createTestDevice } from '../../../../support/openTestRepository';
import { createSilentSound } from '../../../../support/silentSound';
import { smallPlan } from '../../../../support/smallPlan';

/** Everything that has been promised by now has come. */
export const settle = async () => {
  for (let i = 0; i < 100; i++) await new Promise((resolve) => setImmediate(resolve));
};

const frameMs = 40;

/** From the beginning of a recording to 'go' and a little more, frames; the quiet stand waits for anyone who sits. */
const framesToGo = 400;

/** What a stored video shows: the person sits, moves after 'go', and sits again until it ends after half a minute. */
const longFilm = buildKeypointTrack(
  film.track.widthPx,
  film.track.heightPx,
  Array.from({ length: 900 }, (_, frame) => ({
    timeMs: frame * frameMs,
    row: frameRow(film.track, Math.min(Math.max(0, frame - framesToGo), film.track.timesMs.length - 1)),
  })),
);

const longFacts = { ...facts, durationMs: longFilm.timesMs.at(-1)! + frameMs };

/**
 * A home session over plain objects: a clock that a test moves, a camera that shows the made-up person of `film`, who
 * sits until the guide says go, and a device that keeps what was written to it.
 */
export async function openFakeHome(
  {
    device = createTestDevice(),
    lasting = true,
  }: { device?: ReturnType<typeof createTestDevice>; lasting?: boolean } = {},
  change: (adapters: HomeAdapters, world: FakeHome) => void = () => undefined,
) {
  const { world: reviewWorld, tracking, navigation } = fakeAdapters();
  const stored = await device.open({ lasting: { records: lasting, videos: lasting } });
  const world = new FakeHome(stored);
  const problem = lasting ? null : new StorageProblem('refused', 'The browser refuses to keep anything.');
  const opened: OpenedRepository = { repository: stored, problem };
  let ids = 0;
  const adapters: HomeAdapters = {
    openRepository: () => Promise.resolve(opened),
    createBackground: (repository) =>
      createBackgroundMeasuring({
        repository,
        openFrameSource: () => Promise.resolve(fakeSource(longFilm, reviewWorld)),
        createTracker: () => fakeTracker(longFilm, reviewWorld),
        weights: 'made-up 4.5.6',
      }),
    openCamera: (wish) => {
      world.wishes.push(wish);
      if (world.cameraFault !== null) return Promise.reject(world.cameraFault);
      return Promise.resolve((world.camera = new FakeCamera()));
    },
    listCameras: () => Promise.resolve([{ deviceId: 'cam-7', label: 'Lid camera', facing: 'front' }]),
    isCameraAllowed: () => Promise.resolve(world.isCameraAllowed),
    watchCameras: () => () => undefined,
    openFeed: () => (world.feed = new FakeFeed()),
    readBrightness: () => ({ mean: 0.5, contrast: 0.2 }),
    checkDevice: () => Promise.resolve(world.check),
    createTracker: () => ({
      load: () => Promise.resolve({ backend: 'wasm', threads: 2 }),
      reset: () => Promise.resolve(),
      estimate: (_picture, _scale, timeMs) =>
        world.trackerFault === null
          ? Promise.resolve(world.rowAt(timeMs))
          : Promise.reject(world.trackerFault),
      close: () => world.trackersClosed++,
    }),
    startLiveSet(setup, onEvent) {
      const set = createLiveSet(setup);
      return {
        push: (frame) => set.push(frame).forEach(onEvent),
        go: (timeMs) => set.go(timeMs),
        finish: () => Promise.resolve(set.finish()),
        failed: new Promise<never>(() => undefined),
        close: () => undefined,
      };
    },
    createBendsReader: () => ({ read: (track) => Promise.resolve(viewFromBends(track).view) }),
    recordVideo: (_stream, sink, { onProblem }) => world.record(sink, onProblem ?? (() => undefined)),
    pickRecordingType: () => 'video/webm;codecs=vp9',
    openFrameSource: () => Promise.resolve({ facts: longFacts, frames: vi.fn(), close: () => undefined }),
    createSound: (onCaption) => (world.sound = createSilentSound(onCaption)),
    keepAwake(onState) {
      onState('on');
      world.isAwake = true;
      return () => (world.isAwake = false);
    },
    watchPage(listener) {
      world.showPage = listener;
      return () => undefined;
    },
    fetchExamplePlan: () => Promise.resolve(JSON.stringify(smallPlan())),
    prepareSigning: (planId) => Promise.resolve(world.signedPlans.push(planId)),
    saveFile: (fileName, text) => world.saved.push({ fileName, text }),
    weights: 'made-up 4.5.6',
    newId: () => `7f0c2c3e-51d4-4a39-8c53-${String(++ids + 100 * world.idsFrom).padStart(12, '0')}`,
    now: () => new Date(Date.parse('2026-05-06T07:08:09Z') + world.nowMs),
    clockMs: () => world.nowMs,
    every(ms, call) {
      const timer = { ms, call, dueMs: world.nowMs + ms };
      world.timers.add(timer);
      return () => world.timers.delete(timer);
    },
    tracking,
    navigation,
    language: { follow: () => Promise.resolve() },
  };
  change(adapters, world);
  const home = createHome(adapters);
  world.phase = () => partOf(home.store.getState(), 'exercise').guide?.phase ?? null;
  void navigation.show('home');
  await home.enter();
  /** With what other steps have of their own, too, so that a test reads it without asking for the step. */
  const state = () => ({ ...absent, ...home.store.getState() });
  return { home, navigation, reviewWorld, world, device, repository: stored, state };
}

/** What the steps have of their own, as it begins. */
const absent = {
  ...freshParts.plan,
  ...freshParts.overview,
  ...freshParts['pain-before'],
  ...freshParts.exercise,
  ...freshParts.after,
};

export class FakeCamera implements Camera {
  isOpen = true;
  private readonly listeners = new Set<(problem: CameraProblem) => void>();
  readonly stream = {} as MediaStream;
  readonly facts = {
    deviceId: 'cam-7',
    label: 'Lid camera',
    facing: 'front' as const,
    widthPx: film.track.widthPx,
    heightPx: film.track.heightPx,
    frameRateHz: 25,
  };
  onEnded(listener: (problem: CameraProblem) => void) {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  }
  onMuted() {
    return () => undefined;
  }
  close() {
    this.isOpen = false;
  }
  unplug() {
    [...this.listeners].forEach((tell) => tell(new CameraProblem('unplugged')));
  }
}

class FakeFeed implements PictureFeed {
  private waiting: LivePicture | null = null;
  private wake: (picture: LivePicture | null) => void = () => undefined;
  private isOpen = true;
  private count = 0;
  next = () => {
    if (!this.isOpen) return Promise.resolve(null);
    const { waiting } = this;
    this.waiting = null;
    if (waiting !== null) return Promise.resolve(waiting);
    return new Promise<LivePicture | null>((resolve) => (this.wake = resolve));
  };
  show = (timeMs: number) => {
    if (!this.isOpen) return;
    this.count++;
    const { widthPx, heightPx } = film.track;
    const picture = { close: () => undefined } as ImageBitmap;
    const shown = { timeMs, picture, scale: 1, widthPx, heightPx };
    const { wake } = this;
    this.wake = (next) => (this.waiting = next);
    wake(shown);
  };
  seen = () => this.count;
  close = () => {
    this.isOpen = false;
    this.wake(null);
  };
}

export class FakeHome {
  nowMs = 1000;
  idsFrom = 0;
  timers = new Set<{ ms: number; call: () => void; dueMs: number }>();
  camera: FakeCamera | null = null;
  feed: FakeFeed | null = null;
  cameraFault: CameraProblem | null = null;
  isCameraAllowed = false;
  /** What cameras were asked for. */
  readonly wishes: CameraWish[] = [];
  trackerFault: Error | null = null;
  trackersClosed = 0;
  check: DeviceCheck = {
    decision: { model: 'full', hasFeedback: true, sentence: null },
    fullFps: 25,
    liteFps: null,
    cameraFps: 25,
    hasPerson: true,
  };
  sound = createSilentSound();
  isAwake = false;
  saved: { fileName: string; text: string }[] = [];
  /** Plans for which a key was made. */
  readonly signedPlans: string[] = [];
  showPage: (isVisible: boolean) => void = () => undefined;
  phase: () => GuidePhase | null = () => null;
  isAway = false;
  /** Fails the recorder's next piece. */
  isFull = false;
  recorder = { pauses: 0, stops: 0 };
  /** When the person began to move, on the world's clock; null while seated. */
  movesFromMs: number | null = null;

  constructor(readonly repository: Repository) {}

  rowAt(timeMs: number): KeypointRow | null {
    if (this.isAway) return null;
    const filmMs = this.movesFromMs === null ? 0 : timeMs - this.movesFromMs;
    const next = film.track.timesMs.findIndex((at) => at >= filmMs);
    return frameRow(film.track, next < 0 ? film.track.timesMs.length - 1 : next);
  }

  record(
    sink: { write(chunk: Blob): Promise<void> },
    onProblem: (problem: RecordingProblem) => void,
  ): VideoRecording {
    const startMs = this.nowMs;
    let pausedMs = 0;
    let pausedAtMs: number | null = null;
    void sink.write(new Blob(['moving pictures']));
    this.failRecorder = () => onProblem(new RecordingProblem('not-kept', new Error('The disk is full.')));
    const ended = Promise.resolve({ bytes: 15, problem: null });
    return {
      pause: () => {
        this.recorder.pauses++;
        pausedAtMs ??= this.nowMs;
      },
      resume: () => {
        if (pausedAtMs !== null) pausedMs += this.nowMs - pausedAtMs;
        pausedAtMs = null;
      },
      stop: () => {
        this.recorder.stops++;
        return ended;
      },
      ended,
      isOver: () => false,
      videoTimeMs: (pageMs) => (pageMs < startMs || pausedAtMs !== null ? null : pageMs - startMs - pausedMs),
    };
  }
  failRecorder: () => void = () => undefined;

  /** Lets time go by, with a picture every 40 ms. */
  async wait(ms: number, isFilming = true): Promise<void> {
    const endMs = this.nowMs + ms;
    while (this.nowMs < endMs) {
      this.nowMs += frameMs;
      if (this.phase() === 'working') this.movesFromMs ??= this.nowMs;
      if (isFilming) this.feed?.show(this.nowMs);
      await new Promise((resolve) => setImmediate(resolve));
      for (const timer of [...this.timers]) {
        if (timer.dueMs > this.nowMs) continue;
        timer.dueMs += timer.ms;
        timer.call();
      }
    }
  }

  /** Lets time go by until the guide is there, at most two minutes. */
  async until(...phases: GuidePhase[]): Promise<void> {
    for (let i = 0; i < 1200 && !phases.includes(this.phase()!); i++) await this.wait(100);
    if (!phases.includes(this.phase()!))
      throw new Error(`never came to ${phases.join()}; stands at ${this.phase()}`);
    if (this.phase() !== 'working') this.movesFromMs = null;
    await settle();
  }
}
