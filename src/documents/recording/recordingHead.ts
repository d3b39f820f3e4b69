import type { RecordingDocument } from './recordingDocument';

/** A recording without the joints of each frame: small, and everything that a review changes. */
export type RecordingHead = Omit<RecordingDocument, 'observed'>;

export function recordingHead(recording: RecordingHead): RecordingHead {
  const head: RecordingHead & { observed?: unknown } = { ...recording };
  delete head.observed;
  return head;
}
