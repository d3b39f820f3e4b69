import type { Correction } from '#core/correction/correction';
import type { PoseModel } from '#core/keypoints/poseModel';
import type { TimedSetup } from '#core/measurement/measureSet';
import type { OpenFrameSource } from '#device/frames/frameSource';
import { trackVideo, type TrackingProgress } from '#device/tracking/trackVideo';
import { trackedRecording, type RecordingOrigin, type ShownRecording } from './shownRecording';
import type { TrackerKeeper } from './trackerKeeper';
import { watchedSource } from './watchedSource';

/** What tracking a video needs from the world around it. */
export interface TrackingTools {
  openFrameSource: OpenFrameSource;
  keeper: Pick<TrackerKeeper, 'ready'>;
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
 * Finds the joints in every frame of a video and measures them.
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
    const { tracker, device } = await keeper.ready(size, signal);
    const watched = onPicture === undefined ? source : watchedSource(source, onPicture);
    const observed = await trackVideo(watched, tracker, { signal, onProgress });
    const { facts } = source;
    return trackedRecording({
      origin,
      video,
      note,
      observed,
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
