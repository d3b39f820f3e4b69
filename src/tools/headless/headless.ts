import '#app/trustedScripts';
import { frameCount } from '#core/keypoints/keypointTrack';
import { hasPerson } from '#core/keypoints/observedPoint';
import type { CloserFrame } from '#core/looks/closerLook';
import { measure } from '#core/measurement/measure';
import { isProblem } from '#core/problem';
import { CameraProblem } from '#device/camera/cameraProblem';
import { shortfallSentence } from '#device/frames/shortfallSentence';
import { createPoseTracker, type WorkerPoseTracker } from '#device/pose/createPoseTracker';
import { poseWeights } from '#device/pose/poseWeights';
import { workingHeightPx } from '#device/pose/workingHeightPx';
import { lookCloser } from '#device/tracking/lookCloser';
import { trackVideo } from '#device/tracking/trackVideo';
import { buildRecording } from '#documents/recording/buildRecording';
import type {
  BenchRequest,
  HeadlessPage,
  MeasuredRecording,
  MeasureRequest,
  Outcome,
  PlainLook,
  Progress,
  RecordedTimes,
} from './headlessPage';
import { jpegPictures } from './jpegPictures';
import { runLive } from './runLive';
import { timeCloser } from './timeCloser';
import { withSource } from './withSource';

/** Shortest time between two progress reports, ms. */
const tellEveryMs = 200;

let tracker: WorkerPoseTracker | undefined;

const headlessPage: HeadlessPage = {
  measureChosenFile: (request) => settleFile((file) => measureFile(file, request)),
  timeRecorded: (request) => settleFile((file) => timeRecorded(file, request)),
  timeCloser: (request) => settleFile((file) => timeCloser(file, createTracker, request)),
  runLive: (request) => settle(() => runLive(startedTracker(), request)),
  giveJpegs: (rateHz) =>
    settleFile((file) =>
      withSource(file, (source) => jpegPictures(source, rateHz, window.takeJpeg!)).then(() => null),
    ),
};
window.headlessPage = headlessPage;

function createTracker(): WorkerPoseTracker {
  return createPoseTracker(new URL('../../', location.href).href);
}

function startedTracker(): WorkerPoseTracker {
  return (tracker ??= createTracker());
}

/** Runs a job on the chosen file. */
async function settleFile<Value>(job: (file: File) => Promise<Value>): Promise<Outcome<Value>> {
  const file = (document.getElementById('video') as HTMLInputElement).files?.[0];
  if (file === undefined) return { value: null, problem: 'No video was chosen.' };
  return settle(() => job(file));
}

/** A problem with the file or the camera comes back as a sentence, anything else is thrown. */
async function settle<Value>(job: () => Promise<Value>): Promise<Outcome<Value>> {
  try {
    return { value: await job(), problem: null };
  } catch (error) {
    if (isProblem(error, 'video') || error instanceof CameraProblem)
      return { value: null, problem: error.message };
    tracker?.close();
    tracker = undefined;
    throw error;
  }
}

async function measureFile(file: File, request: MeasureRequest): Promise<MeasuredRecording> {
  const { setup, limits, model, note, look } = request;
  return withSource(file, async (source, openedMs) => {
    const tracker = startedTracker();
    const loadStartMs = performance.now();
    const device = await tracker.load(model);
    const loadMs = performance.now() - loadStartMs;
    const along: CloserFrame[] = [];
    if (look === 'along') await tracker.loadSecond();
    const closer =
      look === 'along' ? { tracker, onLook: (seen: CloserFrame) => void along.push(seen) } : undefined;
    const track = await trackVideo(source, tracker, { closer, onProgress: tellNowAndThen() });
    const measurement = measure(track, setup);
    const seconds = (performance.now() - openedMs - loadMs) / 1000;
    const frames = frameCount(track);
    const closerStartMs = performance.now();
    const again = look === 'closer' ? await lookCloser(source, tracker, track, measurement) : null;
    const looks = look === 'along' ? along : again;
    const closerSeconds = (performance.now() - closerStartMs) / 1000;
    const { fileBytes: bytes, codec, widthPx, heightPx, durationMs, frameRateHz } = source.facts;
    return {
      recording: buildRecording({
        id: crypto.randomUUID(),
        createdAt: new Date(),
        note,
        limits,
        video: { bytes, codec, widthPx, heightPx, durationMs, frameRateHz },
        model: { name: 'BlazePose', size: model, weights: poseWeights, backend: device.backend },
        track,
        measurement,
      }),
      closer: looks === null ? null : { looks: looks.map(plainLook), seconds: closerSeconds },
      notes: measurement.notes,
      shortfall: shortfallSentence(source.facts, frames),
      pipeline: {
        readBy: source.facts.readBy,
        framesExpected: source.facts.expectedFrames,
        frames,
        framesWithPerson: Array.from({ length: frames }, (_, i) => hasPerson(track, i)).filter(Boolean)
          .length,
        framesPerSecond: frames / seconds,
        tensors: await tracker.countTensors(),
        device,
      },
    };
  });
}

function plainLook({ frame, mirrored, second, secondMirrored }: CloserFrame): PlainLook {
  const plain = (row: Float32Array) => Array.from(row, (value) => Math.round(value * 100) / 100);
  return {
    frame,
    mirrored: mirrored === null ? null : plain(mirrored),
    second: plain(second),
    secondMirrored: plain(secondMirrored),
  };
}

/** Times the full run from file to numbers against the network alone on the same pictures, in turn. */
async function timeRecorded(file: File, { model, maxFrames, rounds }: BenchRequest): Promise<RecordedTimes> {
  const running = startedTracker();
  const device = await running.load(model);
  await withSource(file, (source) => trackVideo(source, running, { maxFrames: 10 })); // Warms both up.
  const times: RecordedTimes = { frames: 0, widthPx: 0, heightPx: 0, pipelineFps: [], bareFps: [], device };
  for (let round = 0; round < rounds; round++) {
    await withSource(file, async (source, openedMs) => {
      const track = await trackVideo(source, running, { maxFrames });
      measure(track, { task: 'split-stance-sit-to-stand', side: 'right' });
      times.frames = frameCount(track);
      times.pipelineFps.push((times.frames * 1000) / (performance.now() - openedMs));
    });
    await withSource(file, async (source) => {
      const pictures: ImageBitmap[] = [];
      for await (const { picture } of source.frames(workingHeightPx)) {
        pictures.push(picture);
        times.widthPx = picture.width;
        times.heightPx = picture.height;
        if (pictures.length === times.frames) break;
      }
      const count = pictures.length;
      times.bareFps.push(count / (await running.timeBareLoop(pictures)));
    });
  }
  return times;
}

function tellNowAndThen(): (progress: Progress) => void {
  let toldMs = -Infinity;
  return (progress) => {
    if (performance.now() - toldMs < tellEveryMs && progress.framesDone < progress.framesExpected) return;
    toldMs = performance.now();
    window.reportProgress?.(progress);
  };
}
