import { bySchema } from '../reading/bySchema';
import type { DocumentKind } from '../reading/documentKind';
import { readDocument } from '../reading/readDocument';
import { recordingSchema } from './recordingDocument';
import { recordingFault } from './recordingFault';
import type { RecordingHead } from './recordingHead';
import { recordingKind, withinBounds } from './recordingKind';

const readHead = bySchema(recordingSchema.omit({ observed: true }), recordingFault);

const headKind: DocumentKind<RecordingHead> = {
  ...recordingKind,
  read: (data) => withinBounds(readHead(data)),
};

/**
 * Reads a recording without its joints from untrusted data.
 *
 * @param words  what it is called where it can't be read
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readRecordingHead(data: unknown, words = headKind.words): RecordingHead {
  return readDocument(data, { ...headKind, words });
}
