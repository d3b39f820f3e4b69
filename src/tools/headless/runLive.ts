import { CameraProblem } from '#device/camera/cameraProblem';
import { openCamera } from '#device/camera/openCamera';
import { checkDevice } from '#device/live/checkDevice';
import type { LiveSetEvent } from '#device/live/createLiveSet';
import { openPictureFeed } from '#device/live/openPictureFeed';
import { startLiveLoop } from '#device/live/startLiveLoop';
import { startLiveSet, type RunningSet } from '#device/live/startLiveSet';
import type { WorkerPoseTracker } from '#device/pose/createPoseTracker';
import { completeRepetitionEndsMs } from './completeRepetitionEndsMs';
import { liveMarks, type LiveRequest, type LiveRun } from './headlessPage';

/** The loop runs for this long before anything is measured: the first pictures take longer than any later one, ms. */
const warmUpMs = 2500;
/** How often a run that waits for a verdict looks for it, ms. */
const verdictPollMs = 100;

/**
 * Runs the live loop on the camera, counting and judging as at home, and the network alone on the same camera's pictures
 * while the camera still runs.
 *
 * @throws CameraProblem  where the camera can't be used or stops while running
 */
export async function runLive(tracker: WorkerPoseTracker, request: LiveRequest): Promise<LiveRun> {
  const device = await tracker.load(request.model ?? 'full');
  const { bareFrames } = request;
  const before = await withCamera(async (stream) => {
    const openFeed = () => openPictureFeed(stream);
    const check = request.model === null ? await checkDevice({ openFeed, tracker }) : null;
    if (check === null) await warmUp(stream, tracker);
    return { check, bareSeconds: await timeBare(stream, tracker, bareFrames) };
  });
  // The camera starts again, so that the loop sees the clip from its start.
  return withCamera(async (stream, camera) => {
    const live = await countLive(stream, tracker, request);
    const bareSeconds = before.bareSeconds + (await timeBare(stream, tracker, bareFrames));
    const bareFps = bareFrames === 0 ? null : (2 * bareFrames) / bareSeconds;
    return { ...live, bareFps, camera, device, check: before.check };
  });
}

async function withCamera<Value>(
  job: (stream: MediaStream, label: string) => Promise<Value>,
): Promise<Value> {
  const camera = await openCamera({ facing: 'front' });
  try {
    return await job(camera.stream, camera.facts.label);
  } finally {
    camera.close();
  }
}

async function warmUp(stream: MediaStream, tracker: WorkerPoseTracker): Promise<void> {
  const loop = startLiveLoop({ feed: openPictureFeed(stream), tracker, onFrame: () => undefined });
  await Promise.race([waitMs(warmUpMs), endedEarly(loop.ended)]);
  loop.stop();
}

async function countLive(stream: MediaStream, tracker: WorkerPoseTracker, request: LiveRequest) {
  const { setup, limits, forMs, awaitVerdicts } = request;
  const feed = openPictureFeed(stream);
  const told: { event: LiveSetEvent; atMs: number }[] = [];
  let set: RunningSet | null = null;
  let frames = 0;
  let startMs = performance.now();
  let size = { widthPx: 0, heightPx: 0 };
  performance.mark(liveMarks.from);
  const loop = startLiveLoop({
    feed,
    tracker,
    onFrame(frame) {
      if (set === null) {
        startMs = frame.timeMs;
        size = { widthPx: frame.widthPx, heightPx: frame.heightPx };
        set = startLiveSet({ setup, limits, startMs, ...size }, (event) =>
          told.push({ event, atMs: performance.now() }),
        );
      }
      frames++;
      set.push(frame);
    },
  });
  const fromMs = performance.now();
  try {
    await Promise.race([waitMs(forMs), endedEarly(loop.ended)]);
    // A busy device is late with its last verdict.
    const verdicts = () => told.filter(({ event }) => event.kind === 'judged').length;
    while (verdicts() < awaitVerdicts && performance.now() - fromMs < 3 * forMs) {
      await Promise.race([waitMs(verdictPollMs), endedEarly(loop.ended)]);
    }
    const seconds = (performance.now() - fromMs) / 1000;
    const seenFrames = feed.seen();
    performance.mark(liveMarks.to);
    loop.stop();
    const running = set as RunningSet | null;
    if (running === null) throw new CameraProblem('in-use');
    const finished = await running.finish();
    return {
      ...size,
      frames,
      liveFps: frames / seconds,
      cameraFps: seenFrames / seconds,
      counts: told.flatMap(({ event, atMs }) =>
        event.kind === 'counted' ? { count: event.count, atMs: atMs - startMs } : [],
      ),
      verdicts: told.flatMap(({ event }) => (event.kind === 'judged' ? event.judgement.verdict : [])),
      unmeasured: told.flatMap(({ event }) =>
        event.kind === 'judged' && event.judgement.reason !== null ? event.judgement.reason : [],
      ),
      reviewedCount: finished.count,
      reviewedEndsMs: completeRepetitionEndsMs(finished.measurement),
    };
  } finally {
    loop.stop();
    (set as RunningSet | null)?.close();
  }
}

/**
 * Seconds that the network alone needs for pictures captured beforehand at the loop's own size, while the
 * camera runs.
 */
async function timeBare(stream: MediaStream, tracker: WorkerPoseTracker, frames: number): Promise<number> {
  const feed = openPictureFeed(stream);
  const pictures: ImageBitmap[] = [];
  while (pictures.length < frames) {
    const next = await feed.next();
    if (next === null) throw new CameraProblem('unplugged');
    pictures.push(next.picture);
  }
  feed.close();
  return frames === 0 ? 0 : tracker.timeBareLoop(pictures);
}

function waitMs(ms: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, ms));
}

async function endedEarly(ended: Promise<void>): Promise<never> {
  await ended;
  throw new CameraProblem('unplugged');
}
