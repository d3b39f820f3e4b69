import { frameCount, type KeypointTrack } from '#core/keypoints/keypointTrack';
import { measure } from '#core/measurement/measure';
import { openFrameSource } from '#device/frames/openFrameSource';
import type { WorkerPoseTracker } from '#device/pose/createPoseTracker';
import { poseWeights } from '#device/pose/poseWeights';
import { trackVideo } from '#device/tracking/trackVideo';
import { createTracking, type Tracking } from '#shell/tracking/createTracking';
import { seenCloser } from '#shell/tracking/shownRecording';
import type { CloserRequest, CloserTimes } from './headlessPage';
import { withSource } from './withSource';

const setup = { task: 'split-stance-sit-to-stand', side: 'right' } as const;

/**
 * Times a pass by itself, and in turn the way a review is opened: the same pass, and a closer look after its numbers.
 * Each has a pose network of its own, so that the pass by itself never meets the second network.
 *
 * @throws  what ends a closer look, too
 */
export async function timeCloser(
  file: File,
  createTracker: () => WorkerPoseTracker,
  { model, rounds }: CloserRequest,
): Promise<CloserTimes> {
  const plain = createTracker();
  const tracking = createTracking({ createTracker, openFrameSource, weights: poseWeights });
  tracking.setModel(model);
  try {
    const device = await plain.load(model);
    await tracking.prepare();
    const times: CloserTimes = { frames: 0, looked: 0, plainMs: [], firstMs: [], wholeMs: [], device };
    for (let round = 0; round < rounds; round++) {
      times.plainMs.push(await timePlain(file, plain));
      const { frames, looked, firstMs, wholeMs } = await timeReview(file, tracking);
      times.frames = frames;
      times.looked = looked;
      times.firstMs.push(firstMs);
      times.wholeMs.push(wholeMs);
    }
    return times;
  } finally {
    plain.close();
    tracking.release();
  }
}

function timePlain(file: File, tracker: WorkerPoseTracker): Promise<number> {
  return withSource(file, async (source, openedMs) => {
    measure(await trackVideo(source, tracker), setup);
    return performance.now() - openedMs;
  });
}

async function timeReview(file: File, tracking: Tracking) {
  const openedMs = performance.now();
  const first = await tracking.trackFile(file, setup);
  const firstMs = performance.now() - openedMs;
  if (first === null) throw new Error('Tracking was cancelled.');
  // Measured again after every repetition, as a review does.
  const onSeen = (soFar: KeypointTrack) => void seenCloser(first, soFar, []);
  const seen = await tracking.lookCloser(first, { onSeen });
  if (seen === null) throw new Error('The closer look was cancelled.');
  const { observed } = seenCloser(first, seen, []);
  const wholeMs = performance.now() - openedMs;
  return { frames: frameCount(observed), looked: observed.closer?.frames ?? 0, firstMs, wholeMs };
}
