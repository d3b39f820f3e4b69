import { readRecordingAside } from '#device/reading/readRecordingAside';
import { checksumOf } from '#device/storage/checksumOf';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { explainProblem } from '#shell/explainProblem';

/** A recording that was not kept, and why; with what to do. */
export interface LeftOut {
  fileName: string;
  sentence: string;
}

/** Recordings that came as files of their own, together with session documents. */
export interface CameAlong {
  /** Those that the session's sets name, in their order. */
  of(session: SessionDocument): RecordingDocument[];
  /** What was not asked for by any session so far, can't be read, or came twice. */
  leftOut(): LeftOut[];
}

/** Reads recordings that came along; what can't be read does not block the others. */
export async function readAlong(files: readonly File[]): Promise<CameAlong> {
  const read = new Map<string, { fileName: string; recording: RecordingDocument }>();
  const refused: LeftOut[] = [];
  const asked = new Set<string>();
  for (const file of files) {
    const { name: fileName } = file;
    try {
      const recording = await readRecordingAside(await file.text());
      const before = read.get(recording.id);
      if (before === undefined) read.set(recording.id, { fileName, recording });
      else if (checksumOf(before.recording) !== checksumOf(recording))
        refused.push({
          fileName,
          sentence: `It is another version of the recording in ${before.fileName}, which was taken. Put in only the one that counts, with its session.`,
        });
    } catch (error) {
      refused.push({ fileName, sentence: explainProblem(error, 'open').sentence });
    }
  }
  return {
    of: ({ sets }) =>
      sets.flatMap(({ sessionId: id }) => {
        const found = id === null ? undefined : read.get(id);
        if (found === undefined) return [];
        asked.add(found.recording.id);
        return [found.recording];
      }),
    leftOut: () => [
      ...refused,
      ...[...read.values()]
        .filter(({ recording }) => !asked.has(recording.id))
        .map(({ fileName }) => ({
          fileName,
          sentence:
            'It belongs to no session that came with it. Put it in together with the document of its session, or open it by itself and keep it for a patient.',
        })),
    ],
  };
}
