import { bySchema } from '../reading/bySchema';
import { savedFileWords, type DocumentKind } from '../reading/documentKind';
import { bringUpRecording } from './bringUpRecording';
import { recordingSchema, recordingVersion, type RecordingDocument } from './recordingDocument';
import { recordingFault } from './recordingFault';

/** How a recording document is read. */
export const recordingKind: DocumentKind<RecordingDocument> = {
  problem: 'recording',
  format: 'overfoot-session',
  version: recordingVersion,
  bringUp: bringUpRecording,
  read: bySchema(recordingSchema, recordingFault),
  words: savedFileWords('session document'),
};
