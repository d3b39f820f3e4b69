import { readSession } from '#documents/session/readSession';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { createRowSaver } from './createRowSaver';
import { unpackRows } from './jointRows';
import { setStartSchema, type SetStart } from './keptSchemas';
import type { Marks } from './marks';
import { findKept, listKept, parseKept } from './parseKept';
import { removeVideosOf, savingRecording } from './recordingChanges';
import type { RecordChange, Records } from './records';
import type { InterruptedSet, Listed, OpenSet, Repository } from './repository';
import { setMark } from './setMark';
import { storageProblem } from './storageProblem';
import { videoName, type Videos } from './videos';

type Sets = Pick<
  Repository,
  'beginSet' | 'interrupted' | 'readInterrupted' | 'keepInterrupted' | 'dropInterrupted'
>;

const rowsOf = (id: string) => `set:${id}`;
const markOf = (id: string) => `${setMark}${id}`;
const readStart = (value: unknown) => parseKept(value, setStartSchema);

/** Sets being recorded, and what is left of them where the recording was interrupted. */
export function createSets(records: Records, videos: Videos, marks: Marks): Sets {
  const removing = (id: string): RecordChange[] => [
    { remove: 'sets', key: id },
    { remove: 'rows', key: `${rowsOf(id)}/`, andBelow: true },
  ];
  const drop = async (id: string) => {
    await records.apply(removing(id));
    await removeVideosOf(videos, [id]);
  };
  const keep = async (
    start: SetStart,
    ...[recording, fromVideo, session]: Parameters<OpenSet['finish']>
  ): Promise<void> => {
    const { id, visitId: sessionId, videoType } = start;
    const video = videoType === null ? null : videoName(id, videoType);
    await records.apply([
      ...savingRecording(recording, { visitId: sessionId, video, fromVideo }),
      ...savingSession(session),
      ...removing(id),
    ]);
  };
  const find = async (id: string): Promise<SetStart> => {
    const start = await findKept(records, 'sets', id, readStart);
    if (start === null) throw storageProblem('missing');
    return start;
  };
  const readVideo = (start: SetStart) =>
    start.videoType === null ? Promise.resolve(null) : videos.read(videoName(start.id, start.videoType));
  const readRows = async (id: string) =>
    unpackRows((await records.list('rows', `${rowsOf(id)}/`)).map(({ value }) => value));

  return {
    async beginSet(asked, onProblem) {
      const start = readStart(asked);
      const { id, videoType } = start;
      const release = await marks.hold(markOf(id));
      try {
        await records.apply([{ put: 'sets', key: id, value: start }]);
        const video = videoType === null ? null : await videos.create(videoName(id, videoType));
        const rows = createRowSaver(records, rowsOf(id), { blocks: 0, lastMs: -1 }, onProblem);
        return {
          id,
          video,
          addRow: (timed) => rows.add(timed),
          async go(goMs) {
            await records.apply([
              { put: 'sets', key: id, value: { ...start, setup: { ...start.setup, goMs } } },
            ]);
          },
          flush: () => rows.flush(),
          async endVideo() {
            await video?.close().catch(() => undefined); // What reached storage can be read.
            const file = await readVideo(start);
            return file === null || file.size === 0 ? null : file;
          },
          async finish(...kept) {
            await video?.close().catch(() => undefined); // What reached storage can be read.
            await keep(start, ...kept);
            rows.stop();
            release();
          },
          async drop() {
            rows.stop();
            try {
              await video?.close().catch(() => undefined);
              await drop(id);
            } finally {
              release(); // What could not be deleted is offered as interrupted.
            }
          },
        };
      } catch (error) {
        await records.apply(removing(id)).catch(() => undefined); // The first error is the one to report.
        release();
        throw error;
      }
    },

    async interrupted() {
      const held = await marks.held();
      const starts = await listKept(records, 'sets', readStart);
      const listed: Listed<InterruptedSet> = { found: [], unreadable: starts.unreadable };
      for (const start of starts.found) {
        if (held.has(markOf(start.id))) continue;
        const rows = await readRows(start.id).catch(() => []); // Its video may still be whole.
        const videoBytes = (await readVideo(start))?.size ?? 0;
        const lastRowMs = rows.at(-1)?.timeMs ?? null;
        listed.found.push({ start, frames: rows.length, lastRowMs, videoBytes });
      }
      listed.found.sort((a, b) => Date.parse(a.start.startedAt) - Date.parse(b.start.startedAt));
      return listed;
    },

    async readInterrupted(id) {
      const start = await find(id);
      const video = await readVideo(start);
      const rows = await readRows(id).catch((error: unknown) => {
        if (video === null) throw error;
        return [];
      });
      return { start, rows, video: video?.size === 0 ? null : video };
    },

    async keepInterrupted(recording, ...kept) {
      await keep(await find(recording.id), recording, ...kept);
    },

    dropInterrupted: drop,
  };
}

/** The changes that save a session, checked first; none for a recording without one. */
export function savingSession(session: SessionDocument | null): RecordChange[] {
  if (session === null) return [];
  return [{ put: 'visits', key: readSession(session).id, value: session }];
}
