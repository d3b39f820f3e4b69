import { parseDocument } from '../reading/readDocument';
import type { RecordingDocument } from './recordingDocument';
import { recordingKind } from './recordingKind';

/**
 * Reads a recording document from text that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function parseRecording(text: string): RecordingDocument {
  return parseDocument(text, recordingKind);
}
