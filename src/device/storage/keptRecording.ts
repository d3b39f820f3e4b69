import { readRecording } from '#documents/recording/readRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingHead, type RecordingHead } from '#documents/recording/recordingHead';
import { keptRecordingWords } from '#documents/recording/recordingKind';
import { jointsKey } from './recordingChanges';
import type { Edition, Records } from './records';

/** Reads a kept recording with its joints; null where there is none. */
export async function loadKeptRecording(
  records: Records,
  id: string,
): Promise<{ recording: RecordingDocument; edition: Edition } | null> {
  const [kept, joints] = await Promise.all([
    records.find('sessions', id),
    records.get('rows', jointsKey(id)),
  ]);
  if (kept === null) return null;
  const { value, edition } = kept;
  const whole = hasJoints(value) ? value : { ...(value as object), observed: joints };
  return { recording: readRecording(whole, keptRecordingWords), edition };
}

/** Reads a kept recording without its joints, which takes a tenth of the time; null where there is none. */
export async function loadKeptHead(
  records: Records,
  id: string,
): Promise<{ recording: RecordingHead; edition: Edition } | null> {
  const kept = await records.find('sessions', id);
  if (kept === null) return null;
  const { value, edition } = kept;
  return {
    recording: hasJoints(value)
      ? recordingHead(readRecording(value, keptRecordingWords))
      : readRecordingHead(value, keptRecordingWords),
    edition,
  };
}

/** Whether a recording was kept by a version of the program that stored the joints inside it. */
export function hasJoints(kept: unknown): boolean {
  return typeof kept === 'object' && kept !== null && 'observed' in kept;
}
