import { readJson } from '../reading/readDocument';
import { readRecording } from './readRecording';
import { recordingKind, type RecordingDocument } from './recordingDocument';

/**
 * Reads a session document from text that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function parseRecording(text: string): RecordingDocument {
  return readRecording(readJson(text, recordingKind.name));
}
