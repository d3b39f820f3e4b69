import type { Correction } from '#core/correction/correction';
import type { TimedRow } from '#core/keypoints/keypointTrack';
import type { PoseDevice, PoseModel } from '#core/keypoints/poseModel';
import type { CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import type { TimedSetup } from '#core/measurement/measureSet';
import { isProblem } from '#core/problem';
import type { OpenFrameSource } from '#device/frames/frameSource';
import { trackVideo, type TrackingProgress } from '#device/tracking/trackVideo';
import { lookAlong } from './lookAlong';
import { trackedRecording, type RecordingOrigin, type ShownRecording } from './shownRecording';
import type { TrackerKeeper } from './trackerKeeper';
import { watchedSource } from './watchedSource';

/** What tracking a video needs from the world around it. */
export interface TrackingTools {
  openFrameSource: OpenFrameSource;
  keeper: Pick<TrackerKeeper, 'ready' | 'discard'>;
  /** Package and version that the network's weights come from. */
  weights: string;
}

export interface TrackFileOptions {
  size: PoseModel;
  signal: AbortSignal;
  onProgress: (progress: TrackingProgress) => void;
  /** Sees every picture before it is tracked. */
  onPicture?: (picture: ImageBitmap) => void;
  /** 'video' where nothing else is said. */
  origin?: RecordingOrigin;
  /** For demo data: that it is invented. */
  note?: string;
  /** Corrections made by hand, which are applied to the new joints. */
  corrections?: readonly Correction[];
}

/**
 * Finds the joints in every frame of a video and measures them; where `observed.closer` is missing, the closer look is
 * to follow. Where the tracker fails on the way (graphics processors are taken away, workers end), another one goes on
 * from there, as long as that leads further; so does one where none got anywhere, once.
 *
 * @throws the signal's reason when cancelled; VideoProblem; whatever the tracker throws
 */
export async function trackFile(
  video: File,
  setup: TimedSetup,
  { openFrameSource, keeper, weights }: TrackingTools,
  { size, signal, onProgress, onPicture, origin = 'video', note = '', corrections = [] }: TrackFileOptions,
): Promise<ShownRecording> {
  const source = await openFrameSource(video);
  try {
    signal.throwIfAborted();
    const watched = onPicture === undefined ? source : watchedSource(source, onPicture);
    let rows: TimedRow[] = [];
    let looks: CloserFrame[] = [];
    let hasFailedHere = false;
    const track = async (backend: PoseDevice['backend'] | null) => {
      const { tracker, device } = await keeper.ready(size, signal);
      // The joints of one recording come from one network.
      if (device.backend !== backend) [rows, looks] = [[], []];
      const closer = await lookAlong(tracker, device.backend, looks);
      const earlier = rows.slice();
      const onRow = (row: TimedRow) => void rows.push(row);
      try {
        return {
          device,
          observed: await trackVideo(watched, tracker, { closer, signal, onProgress, earlier, onRow }),
        };
      } catch (error) {
        const isStuck = rows.length === earlier.length;
        if (signal.aborted || isProblem(error, 'video') || (isStuck && hasFailedHere)) throw error;
        hasFailedHere = isStuck;
        keeper.discard();
        looks = looks.filter(({ frame }) => frame < rows.length);
        return { device, observed: null };
      }
    };
    let tracked = await track(null);
    while (tracked.observed === null) tracked = await track(tracked.device.backend);
    const { observed, device } = tracked;
    const { facts } = source;
    return trackedRecording({
      origin,
      video,
      note,
      observed: combineLooks(observed, looks),
      facts,
      setup,
      size,
      device,
      weights,
      corrections,
    });
  } finally {
    source.close();
  }
}
