import { readRecording } from '#documents/recording/readRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import { jointsKey } from './recordingChanges';
import type { Records } from './records';

/** Reads a kept recording with its joints; null where there is none. */
export async function loadKeptRecording(records: Records, id: string): Promise<RecordingDocument | null> {
  const [kept, joints] = await Promise.all([records.get('sessions', id), records.get('rows', jointsKey(id))]);
  if (kept === undefined) return null;
  return readRecording(hasJoints(kept) ? kept : { ...(kept as object), observed: joints });
}

/** Reads a kept recording without its joints, which takes a tenth of the time; null where there is none. */
export async function loadKeptHead(records: Records, id: string): Promise<RecordingHead | null> {
  const kept = await records.get('sessions', id);
  if (kept === undefined) return null;
  return hasJoints(kept) ? recordingHead(readRecording(kept)) : readRecordingHead(kept);
}

/** Whether a recording was kept by a version of the program that stored the joints inside it. */
export function hasJoints(kept: unknown): boolean {
  return typeof kept === 'object' && kept !== null && 'observed' in kept;
}
