import { usualSureness } from '#core/chance/grade';
import { keypointNames, type KeypointName } from '#core/keypoints/keypointNames';
import { frameCount, frameRow, type KeypointTrack } from '#core/keypoints/keypointTrack';
import type { PoseDevice } from '#core/keypoints/poseModel';
import { secondJoints } from '#core/looks/closerLook';
import { measure } from '#core/measurement/measure';
import { Problem } from '#core/problem';
import { defaultLimits, withLimit } from '#core/protocol/limits';
import type { Frame, FrameSource, VideoFacts } from '#device/frames/frameSource';
import type { CarefulTracker } from '#device/pose/poseTracker';
import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { ReviewAdapters } from '#features/review/store/reviewAdapters';
import { createNavigation, type Navigation } from '#shell/navigation/createNavigation';
import { createTracking, type Tracking, type TrackingAdapters } from '#shell/tracking/createTracking';
import { fakeHistory } from './fakeHistory';
import { filmPerson } from './syntheticPerson';

/** Three repetitions with the right leg; the last one goes far beyond the default limit. */
export const film = filmPerson({
  task: 'split-stance-sit-to-stand',
  side: 'right',
  repetitions: [{ peakDeg: 0 }, { peakDeg: 10 }, { peakDeg: 22 }],
  camera: { distanceM: 12, focalPx: 6000 },
  rateHz: 25,
});

export const facts: VideoFacts = {
  fileName: 'stairs.mp4',
  fileBytes: 4321,
  codec: 'avc1.640028',
  widthPx: film.track.widthPx,
  heightPx: film.track.heightPx,
  durationMs: film.track.timesMs.at(-1)! + 40,
  frameRateHz: 25,
  expectedFrames: frameCount(film.track),
  readBy: 'webcodecs',
};

export const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;

export const recordingText = JSON.stringify(
  buildRecording({
    id: '1b6f8a1e-8f2b-4c07-9a25-6a1f0d3c5e77',
    createdAt: new Date('2026-02-03T04:05:06Z'),
    note: 'Invented: a made-up person.',
    limits: withLimit(defaultLimits, 'knee-angle', 'most', 12),
    video: {
      bytes: facts.fileBytes,
      codec: facts.codec,
      widthPx: facts.widthPx,
      heightPx: facts.heightPx,
      durationMs: facts.durationMs,
      frameRateHz: facts.frameRateHz,
    },
    model: { name: 'BlazePose', size: 'full', weights: 'made-up 1.2.3', backend: 'wasm' },
    track: film.track,
    measurement: measure(film.track, setup),
  }),
);

/** What was requested of the fakes, and what the tests may change. */
export interface FakeWorld {
  saved: { fileName: string; text: string }[];
  /** What was kept for whom. */
  keptFor: { recording: RecordingDocument; pseudonym: string }[];
  trackersStarted: number;
  trackersClosed: number;
  modelsLoaded: string[];
  /** Where the network runs. */
  backend: PoseDevice['backend'];
  framesEstimated: number;
  /** Frames looked at more closely. */
  framesSeenCloser: number;
  /** Rejects where the second network can't be loaded. */
  beforeSecond: () => Promise<void>;
  /** Awaited before each frame that is looked at more closely. */
  beforeCloser: () => Promise<void>;
  /** The second network sees every joint this far to the right of where the usual look does, px. */
  secondAsidePx: number;
  sourcesOpen: number;
  facts: VideoFacts;
  /** Awaited before each answer of the tracker. */
  beforeAnswer: (frame: number) => Promise<void>;
  beforeLoad: () => Promise<void>;
}

/** ReviewAdapters that film the made-up person, whatever the file; a file named 'bad.txt' is no video. */
export function fakeAdapters(): {
  adapters: ReviewAdapters & TrackingAdapters;
  world: FakeWorld;
  tracking: Tracking;
  navigation: Navigation;
} {
  const world: FakeWorld = {
    saved: [],
    keptFor: [],
    trackersStarted: 0,
    trackersClosed: 0,
    modelsLoaded: [],
    backend: 'wasm',
    framesEstimated: 0,
    framesSeenCloser: 0,
    beforeSecond: () => Promise.resolve(),
    beforeCloser: () => Promise.resolve(),
    secondAsidePx: 0,
    sourcesOpen: 0,
    facts,
    beforeAnswer: () => Promise.resolve(),
    beforeLoad: () => Promise.resolve(),
  };
  const navigation = createNavigation(fakeHistory().history, () => true);
  const tracking = createTracking({
    openFrameSource: (file) => adapters.openFrameSource(file),
    createTracker: () => adapters.createTracker(),
    weights: 'made-up 4.5.6',
  });
  const adapters: ReviewAdapters & TrackingAdapters = {
    openFrameSource: (file) => {
      if (file.name === 'bad.txt') {
        return Promise.reject(new Problem('video', '"bad.txt" is not a video. Choose another.'));
      }
      world.sourcesOpen++;
      return Promise.resolve(fakeSource(film.track, world));
    },
    createTracker: () => {
      world.trackersStarted++;
      return fakeTracker(film.track, world);
    },
    weights: 'made-up 4.5.6',
    tracking,
    navigation,
    fetchExample: () => Promise.resolve({ recordingText, video: new File(['x'], 'example.mp4') }),
    saveFile: (fileName, text) => world.saved.push({ fileName, text }),
    reviewer: { read: () => 'T1', write: () => undefined },
    sureness: { read: () => usualSureness, write: () => undefined },
    patients: {
      pseudonyms: () => Promise.resolve(['Blue Heron 7']),
      keep: (recording, _video, pseudonym) => {
        world.keptFor.push({ recording, pseudonym });
        return Promise.resolve({
          session: null,
          save: () => Promise.resolve(),
          readOther: () => Promise.reject(new Error('There is no other.')),
        });
      },
    },
    newId: () => '7f0c2c3e-51d4-4a39-8c53-0d9a4be4d1c2',
    now: () => new Date('2026-05-06T07:08:09Z'),
    later: (call) => call(),
  };
  return { adapters, world, tracking, navigation };
}

export function fakeSource(track: KeypointTrack, world: FakeWorld): FrameSource {
  return {
    facts: world.facts,
    async *frames(_maxHeightPx, afterMs = -1, isWanted = () => true) {
      for (const timeMs of track.timesMs) {
        if (timeMs <= afterMs || !isWanted(timeMs)) continue;
        await Promise.resolve();
        const picture = { close: () => undefined } as ImageBitmap;
        yield { timeMs, picture, scale: 1 } satisfies Frame;
      }
    },
    close: () => world.sourcesOpen--,
  };
}

export function fakeTracker(track: KeypointTrack, world: FakeWorld): CarefulTracker {
  const tracker: CarefulTracker = {
    async load(model) {
      await world.beforeLoad();
      world.modelsLoaded.push(model);
      return { backend: world.backend, threads: 2 };
    },
    reset: () => Promise.resolve(),
    async estimate(_picture, _scale, timeMs) {
      const frame = track.timesMs.indexOf(timeMs);
      await world.beforeAnswer(frame);
      world.framesEstimated++;
      return frameRow(track, frame);
    },
    loadSecond: () => world.beforeSecond(),
    async lookCloser(picture, _scale, _timeMs, usual) {
      picture.close();
      await world.beforeCloser();
      world.framesSeenCloser++;
      const second = Float32Array.from(
        secondJoints.flatMap((name) => {
          const [x, y, score] = usual.subarray(...pointRange(name)) as unknown as [number, number, number];
          return [x + world.secondAsidePx, y, score];
        }),
      );
      return { mirrored: usual, second, secondMirrored: second };
    },
    async estimateCloser(picture, scale, timeMs) {
      const row = await tracker.estimate(picture, scale, timeMs);
      return {
        row,
        closer: row === null ? null : await tracker.lookCloser(picture, scale, timeMs, row, false),
      };
    },
    close: () => world.trackersClosed++,
  };
  return tracker;
}

const pointRange = (name: KeypointName): [number, number] => {
  const from = keypointNames.indexOf(name) * 3;
  return [from, from + 3];
};
