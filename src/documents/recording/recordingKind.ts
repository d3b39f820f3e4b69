import { filmBounds, filmFault, type FilmFault } from '#core/keypoints/filmBounds';
import { bySchema } from '../reading/bySchema';
import {
  fileWords,
  savedFileWords,
  type DocumentContent,
  type DocumentKind,
  type DocumentWords,
} from '../reading/documentKind';
import { bringUpRecording } from './bringUpRecording';
import {
  mostRepetitions,
  recordingSchema,
  recordingVersion,
  type RecordingDocument,
} from './recordingDocument';
import { recordingFault } from './recordingFault';
import type { RecordingHead } from './recordingHead';

const readWhole = bySchema(recordingSchema, recordingFault);

/** Another copy would be as long, or as large. */
const tooMuchNext = 'It stays as it is, but can’t be shown here: film shorter sets, in one go.';

/** What was read, where it can be measured; otherwise the fault says in which way it is too much. */
export function withinBounds<Value extends RecordingHead & Partial<RecordingDocument>>(
  content: DocumentContent<Value>,
): DocumentContent<Value> {
  if (!('value' in content)) return content;
  const fault = filmFault({ ...content.value.video, ...content.value.observed });
  return fault === null ? content : { fault: filmFaultWords(fault), whatNext: tooMuchNext };
}

/** As it follows its subject. */
function filmFaultWords(fault: FilmFault): string {
  switch (fault.kind) {
    case 'picture':
      return `has pictures of ${fault.widthPx} by ${fault.heightPx} px, of which nobody can be measured`;
    case 'frames':
      return `has more than ${filmBounds.frames} frames, which is more than can be measured at once`;
    case 'length':
      return `lasts longer than ${filmBounds.spanMs / 60_000} minutes, which is longer than can be measured at once`;
    case 'gaps':
      return `has frames more than ${filmBounds.gapMs / 1000} s apart, so that the movement between them is unknown`;
  }
}

/** Looked at first: a schema lists the faults of every entry. */
function tooMany(data: unknown): { fault: string } | null {
  const { derived } = data as { derived?: { repetitions?: unknown } };
  const repetitions = derived?.repetitions;
  if (!Array.isArray(repetitions) || repetitions.length <= mostRepetitions) return null;
  return { fault: `is damaged at "derived.repetitions" (more than ${mostRepetitions})` };
}

/** What is said of a recording that is kept on this device, and not a file. */
export const keptRecordingWords: DocumentWords = fileWords(
  'kept recording',
  'Restore it from a saved file, or delete it.',
  'Restore it from a saved file, or delete it.',
);

/** How a recording document is read. */
export const recordingKind: DocumentKind<RecordingDocument> = {
  problem: 'recording',
  format: 'overfoot-session',
  version: recordingVersion,
  bringUp: bringUpRecording,
  read: (data) => tooMany(data) ?? withinBounds(readWhole(data)),
  words: savedFileWords('recording document'),
};
