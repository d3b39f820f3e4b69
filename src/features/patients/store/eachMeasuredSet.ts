import { measureCorrected } from '#core/correction/measureCorrected';
import type { Repository } from '#device/storage/repository';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { withTakenLimits } from '#documents/recording/withTakenLimits';
import type { SessionSet } from '#documents/session/sessionDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { takenLimits } from '#features/sessions/rules/takenLimits';

interface MeasuredSet {
  session: ListedSession;
  line: SessionSet;
  /** With the limits that its review would show. */
  recording: RecordingDocument;
  measured: ReturnType<typeof measureCorrected>;
}

/**
 * Measures every recorded set of a patient from its joints, the oldest session first; one that can't be read is left
 * out. One recording is held at a time.
 *
 * @param sessions  of one patient, in any order
 * @param onProgress  called before each set; what it returns is waited for
 */
export async function eachMeasuredSet(
  kept: Pick<Repository, 'recordings'>,
  sessions: readonly ListedSession[],
  onProgress: (done: number, total: number) => Promise<void>,
  onSet: (set: MeasuredSet) => void,
): Promise<void> {
  const sets = oldestFirst(sessions).flatMap((session) =>
    session.sets.flatMap(({ line, reading }) =>
      line.sessionId === null || reading.state !== 'read' ? [] : [{ session, line, id: line.sessionId }],
    ),
  );
  for (const [index, { session, line, id }] of sets.entries()) {
    await onProgress(index, sets.length);
    const found = await kept.recordings.find(id);
    if (found === null) continue;
    const recording = withTakenLimits(found.recording, takenLimits(sessions, id));
    const { setup, corrections = [] } = recording;
    const measured = measureCorrected(recordingTrack(recording), setup, corrections);
    onSet({ session, line, recording, measured });
  }
}

export function oldestFirst(sessions: readonly ListedSession[]): ListedSession[] {
  return [...sessions].sort((a, b) => Date.parse(a.startedAt) - Date.parse(b.startedAt));
}
