import { readDocument } from '../reading/readDocument';
import type { RecordingDocument } from './recordingDocument';
import { recordingKind } from './recordingKind';

/**
 * Reads a recording document from data that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readRecording(data: unknown): RecordingDocument {
  return readDocument(data, recordingKind);
}
