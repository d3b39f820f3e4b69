import { measureCorrected } from '#core/correction/measureCorrected';
import { frameCount, type KeypointTrack, type TimedRow } from '#core/keypoints/keypointTrack';
import type { CloserFrame } from '#core/looks/closerLook';
import { combineLooks } from '#core/looks/combineLooks';
import type { FrameSource } from '#device/frames/frameSource';
import { shortfallSentence } from '#device/frames/shortfallSentence';
import type { CarefulTracker } from '#device/pose/poseTracker';
import type { TrackingModel } from '#device/storage/keptSchemas';
import type { Repository, TrackingRows } from '#device/storage/repository';
import { StorageProblem } from '#device/storage/storageProblem';
import type { CloserProgress } from '#device/tracking/lookCloser';
import { trackVideo, type TrackingProgress, type TrackOptions } from '#device/tracking/trackVideo';
import { buildRecording } from '#documents/recording/buildRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { lookAlong } from './lookAlong';
import { seeCloser } from './seeCloser';
import { recordingFacts } from './shownRecording';

/** How far measuring again has come; closer is null until the usual look is over. */
export interface MeasuringProgress extends TrackingProgress {
  closer: CloserProgress | null;
}

/** A video that ends this much earlier than the joints tracked live must not replace them, ms. */
const bearableLossMs = 1000;

/**
 * Tracks a recording's video and measures it again. Rows are saved on the way; a video that stops giving
 * frames before its end (browsers take decoders away from pages in the background) is continued as long as
 * more of it arrives.
 *
 * @returns 'replaced' where it replaced the recording tracked live; 'video-too-short' where the video shows
 *   less than that one, which stays; 'gone' where the recording was deleted meanwhile
 * @throws the signal's reason when cancelled; StorageProblem; whatever the source or the tracker throws
 */
export async function measureFromVideo(
  id: string,
  source: FrameSource,
  tracker: CarefulTracker,
  model: TrackingModel,
  repository: Repository,
  { signal, onProgress }: { signal: AbortSignal; onProgress: (progress: MeasuringProgress) => void },
): Promise<'replaced' | 'video-too-short' | 'gone'> {
  // Rows that can't be saved now are tracked again after a reload; nothing else is lost.
  const rows = await repository.trackingRows(id, model, () => undefined);
  try {
    let tracking: TrackingProgress | null = null;
    const looks: CloserFrame[] = [];
    // Rows of an earlier run come without looks: then these follow.
    const closer = rows.earlier.length > 0 ? undefined : await lookAlong(tracker, model.backend, looks);
    const usual = await trackToEnd(source, tracker, rows, {
      closer,
      signal,
      onProgress: (progress) => onProgress({ ...(tracking = progress), closer: null }),
    });
    const found = await repository.recordings.findHead(id);
    const seen =
      found === null || closer !== undefined
        ? combineLooks(usual, looks)
        : await seeCloser(source, tracker, usual, found.recording, {
            signal,
            onProgress: (closer) => {
              if (tracking !== null) onProgress({ ...tracking, closer });
            },
          });
    rows.stop();
    const lastMs = usual.timesMs.at(-1) ?? -Infinity;
    for (;;) {
      const kept = await repository.recordings.find(id);
      if (kept === null) {
        await repository.recordings.remove(id); // Rows written after it was deleted.
        return 'gone';
      }
      const { recording, edition } = kept;
      if ((recording.observed.timesMs.at(-1) ?? -Infinity) > lastMs + bearableLossMs)
        return 'video-too-short';
      const isReplaced = await repository.recordings
        .replaceFromVideo(tracked(recording, source, model, seen), edition)
        .then(() => true, unlessChanged);
      if (isReplaced) return 'replaced';
    }
  } catch (error) {
    await rows.flush().catch(() => undefined); // The error that ended it is the one to report.
    throw error;
  } finally {
    rows.stop();
  }
}

/** False where it was reviewed while it was measured: then it is measured with the newer review. */
function unlessChanged(error: unknown): boolean {
  if (error instanceof StorageProblem && error.reason === 'changed') return false;
  throw error;
}

async function trackToEnd(
  source: FrameSource,
  tracker: CarefulTracker,
  rows: TrackingRows,
  options: Pick<TrackOptions, 'closer' | 'onProgress'> & { signal: AbortSignal },
): Promise<KeypointTrack> {
  const earlier: TimedRow[] = [...rows.earlier];
  for (;;) {
    const before = earlier.length;
    const onRow = (row: TimedRow) => {
      earlier.push(row);
      rows.addRow(row);
    };
    const track = await trackVideo(source, tracker, { ...options, earlier: earlier.slice(), onRow });
    if (shortfallSentence(source.facts, frameCount(track)) === null || earlier.length === before)
      return track;
  }
}

/** The recording with other joints; all else stays, so that nothing set meanwhile is lost. */
function tracked(
  { id, createdAt, note, limits, setup, corrections = [], review }: RecordingDocument,
  { facts }: FrameSource,
  model: TrackingModel,
  track: KeypointTrack,
): RecordingDocument {
  const { measurement, excluded } = measureCorrected(track, setup, corrections);
  return buildRecording({
    setup,
    corrections,
    excluded,
    review,
    id,
    createdAt: new Date(createdAt),
    note,
    limits,
    video: recordingFacts(facts),
    model,
    track,
    measurement,
  });
}
