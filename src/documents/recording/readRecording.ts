import { checkRecording } from './checkRecording';
import { readDocument } from '../reading/readDocument';
import { recordingKind, type RecordingDocument } from './recordingDocument';

/**
 * Reads a session document from data that may be anything.
 *
 * @throws SessionProblem  with a sentence that says what is wrong and what to do
 */
export function readRecording(data: unknown): RecordingDocument {
  const recording = readDocument(data, recordingKind);
  checkRecording(recording);
  return recording;
}
