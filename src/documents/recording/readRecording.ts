import { readDocument } from '../reading/readDocument';
import type { RecordingDocument } from './recordingDocument';
import { recordingKind } from './recordingKind';

/**
 * Reads a recording document from untrusted data.
 *
 * @param words  what it is called where it can't be read
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readRecording(data: unknown, words = recordingKind.words): RecordingDocument {
  return readDocument(data, { ...recordingKind, words });
}
