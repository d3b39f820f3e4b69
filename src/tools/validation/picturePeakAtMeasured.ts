import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { ClipTruth } from './clipTruth';
import type { RecordingRepetition } from './readPeak';

/**
 * Greatest true angle in the picture over just those moments of a repetition at which the tool has a value, so that
 * a peak is compared with a peak of the same moments.
 *
 * @returns degrees, inward positive; null where the truth has no frames there
 */
export function picturePeakAtMeasured(
  { perFrame, workingSide }: Pick<ClipTruth, 'perFrame' | 'workingSide'>,
  { startMs, rateHz, curves }: Pick<RecordingDocument['derived'], 'startMs' | 'rateHz' | 'curves'>,
  { loadedFrom, loadedTo }: Pick<RecordingRepetition, 'loadedFrom' | 'loadedTo'>,
): number | null {
  let peakDeg: number | null = null;
  for (const { t, side } of perFrame) {
    const sample = Math.round(((t * 1000 - startMs) * rateHz) / 1000);
    if (sample < loadedFrom || sample > loadedTo || curves['knee-angle'].values[sample] === null) continue;
    const angleDeg = side[workingSide]?.fppaImage;
    if (angleDeg !== undefined && (peakDeg === null || angleDeg > peakDeg)) peakDeg = angleDeg;
  }
  return peakDeg;
}
