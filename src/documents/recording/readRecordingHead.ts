import { checkRecording } from './checkRecording';
import { readDocument, type DocumentKind } from '../reading/readDocument';
import { recordingKind, recordingSchema } from './recordingDocument';
import type { RecordingHead } from './recordingHead';

const headKind: DocumentKind<RecordingHead> = {
  ...recordingKind,
  schema: recordingSchema.omit({ observed: true }),
};

/**
 * Reads a session without its joints from data that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readRecordingHead(data: unknown): RecordingHead {
  const head = readDocument(data, headKind);
  checkRecording(head);
  return head;
}
