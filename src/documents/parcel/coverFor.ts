import type { RecordingDocument } from '../recording/recordingDocument';
import { recordingTrack } from '../recording/recordingTrack';
import { headCover } from './headCover';
import { outOfLineSpans } from './outOfLineSpans';
import type { CoveredPart, PictureCover } from './videoPart';

/** What is painted black in a recording's pictures; null where none of its video is sent. */
export function coverFor(part: CoveredPart, recording: RecordingDocument): PictureCover | null {
  if (part === 'without-head') return headCover(recordingTrack(recording));
  const spans = outOfLineSpans(recording.derived.repetitions);
  if (spans.length === 0) return null;
  return (timeMs) => (spans.some(({ fromMs, toMs }) => timeMs >= fromMs && timeMs <= toMs) ? 0 : Infinity);
}
