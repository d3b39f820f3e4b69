import { sessionTrack } from '../recording/sessionTrack';
import type { SessionDocument } from '../recording/sessionDocument';
import { headCover } from './headCover';
import { outOfLineSpans } from './outOfLineSpans';
import type { CoveredPart, PictureCover } from './videoPart';

/** What of a session's pictures is painted black; null where none of its video is sent. */
export function coverFor(part: CoveredPart, session: SessionDocument): PictureCover | null {
  if (part === 'without-head') return headCover(sessionTrack(session));
  const spans = outOfLineSpans(session.derived.repetitions);
  if (spans.length === 0) return null;
  return (timeMs) => (spans.some(({ fromMs, toMs }) => timeMs >= fromMs && timeMs <= toMs) ? 0 : Infinity);
}
