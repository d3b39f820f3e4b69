import { savingSession } from './createSets';
import { recordingFactsSchema } from './keptSchemas';
import type { Marks } from './marks';
import { savingRecording } from './recordingChanges';
import type { RecordChange, Records } from './records';
import type { KeptWhole, Repository } from './repository';
import { setMark } from './setMark';
import { StorageProblem } from './storageProblem';
import { videoName, writeVideo, type Videos } from './videos';

/** Keeps sessions and recordings from elsewhere, each whole or not at all. */
export function createKeepTogether(
  records: Records,
  videos: Videos,
  marks: Marks,
): Repository['keepTogether'] {
  /** Another name than any video that is there; a mark tells other tabs that it is being written. */
  const writeBeside = async (id: string, video: Blob, releases: (() => void)[]): Promise<string> => {
    const name = videoName(`${id}.${crypto.randomUUID()}`, video.type);
    releases.push(await marks.hold(besideMark(name)));
    await writeVideo(videos, name, video);
    return name;
  };
  const videoKept = async (id: string): Promise<string | null> => {
    const facts = recordingFactsSchema.safeParse(await records.get('facts', id).catch(() => undefined));
    return facts.success ? facts.data.video : null;
  };

  return async (session, recordings) => {
    const releases: (() => void)[] = [];
    const written: string[] = [];
    const replaced: string[] = [];
    try {
      const changes: RecordChange[] = savingSession(session);
      for (const { recording, visitId, fromVideo, video, expects } of recordings) {
        const before = await videoKept(recording.id);
        const name = await nameOf(recording.id, video, before);
        changes.push(...savingRecording(recording, { visitId, video: name, fromVideo }, expects));
        if (before !== null && before !== name) replaced.push(before);
      }
      await records.apply(changes);
    } catch (error) {
      // What did not answer may still be done: then the next opening finds what no record names.
      const isOver = !(error instanceof StorageProblem && error.reason === 'silent');
      for (const name of isOver ? written : []) await videos.remove(name).catch(() => undefined);
      throw error;
    } finally {
      for (const release of releases) release();
    }
    // What can't be deleted now is found at the next opening.
    for (const name of replaced) await videos.remove(name).catch(() => undefined);

    async function nameOf(id: string, video: KeptWhole['video'], before: string | null) {
      if (video === 'stays') return before;
      if (video === null) return null;
      const name = await writeBeside(id, video, releases);
      written.push(name);
      return name;
    }
  };
}

/** The mark held while a video is written that no record names yet. */
export function besideMark(name: string): string {
  return `${setMark}${name}`;
}
