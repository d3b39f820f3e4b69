import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import type { OpenFrameSource } from '#device/frames/frameSource';
import { lookCloser, type CloserProgress } from '#device/tracking/lookCloser';
import type { ShownRecording } from './shownRecording';
import type { TrackerKeeper } from './trackerKeeper';

export interface LookOptions {
  signal: AbortSignal;
  onProgress: (progress: CloserProgress) => void;
  /** Called with all that was seen so far whenever another repetition is finished. */
  onSeen: (observed: KeypointTrack) => void;
}

/**
 * Looks at a recording more closely, repetition by repetition.
 *
 * @param recording  from the usual look, with its video
 * @throws the signal's reason when cancelled; Problem of a video; whatever the tracker throws
 */
export async function lookAtRecording(
  { video, observed, measurement, model }: ShownRecording,
  { openFrameSource, keeper }: { openFrameSource: OpenFrameSource; keeper: Pick<TrackerKeeper, 'ready'> },
  { signal, onProgress, onSeen }: LookOptions,
): Promise<KeypointTrack> {
  if (video === null) throw new RangeError('A closer look needs the video.');
  const source = await openFrameSource(video);
  try {
    signal.throwIfAborted();
    const { tracker } = await keeper.ready(model.size, signal);
    const endsMs = measurement.repetitions.map(({ loadedTo }) => measurement.timesMs[loadedTo]!);
    const looks: CloserFrame[] = [];
    const onFrame = (look: CloserFrame) => {
      looks.push(look);
      if (endsMs[0] === undefined || observed.timesMs[look.frame]! <= endsMs[0]) return;
      endsMs.shift();
      onSeen(combineLooks(observed, looks));
    };
    const all = await lookCloser(source, tracker, observed, measurement, { signal, onProgress, onFrame });
    return combineLooks(observed, all);
  } finally {
    source.close();
  }
}
