import { bySchema } from '../reading/bySchema';
import type { DocumentKind } from '../reading/documentKind';
import { readDocument } from '../reading/readDocument';
import { recordingSchema } from './recordingDocument';
import { recordingFault } from './recordingFault';
import type { RecordingHead } from './recordingHead';
import { recordingKind } from './recordingKind';

const headKind: DocumentKind<RecordingHead> = {
  ...recordingKind,
  read: bySchema(recordingSchema.omit({ observed: true }), recordingFault),
};

/**
 * Reads a recording without its joints from data that may be anything.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readRecordingHead(data: unknown): RecordingHead {
  return readDocument(data, headKind);
}
