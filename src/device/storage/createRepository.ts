import { readRecording } from '#documents/recording/readRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import { recordingHead } from '#documents/recording/recordingHead';
import { readSession } from '#documents/session/readSession';
import { createSets, savingSession, setMark } from './createSets';
import { createTrackingRows } from './createTrackingRows';
import { eraseKept } from './eraseKept';
import { hasJoints, loadKeptHead, loadKeptRecording } from './keptRecording';
import { planRecordSchema, recordingFactsSchema, type PlanRecord, type RecordingFacts } from './keptSchemas';
import type { DeviceLock } from './lock/createDeviceLock';
import { createMarks, type Marks } from './marks';
import { findKept, listKept, parseKept } from './parseKept';
import {
  lastLimits,
  puttingJoints,
  removingRecording,
  removingTracking,
  savingRecording,
  videoNamesOf,
} from './recordingChanges';
import type { Records } from './records';
import type { Repository } from './repository';
import { StorageProblem, storageProblem } from './storageProblem';
import type { Videos } from './videos';
import { watchChanges, type ChangeChannel } from './watchChanges';

export interface RepositoryParts {
  records: Records;
  videos: Videos;
  lasting: Repository['lasting'];
  marks?: Marks;
  /** Null where nothing persists that could be locked. */
  lock?: DeviceLock | null;
  now?: () => Date;
  /** The browser's own storage estimate; undefined where it gives none. */
  storage?: Pick<StorageManager, 'estimate' | 'persist'> | undefined;
  /** Carries changes to and from other tabs; null where there is none. */
  channel?: ChangeChannel | null;
}

const readFacts = (value: unknown) => parseKept(value, recordingFactsSchema);
const readPlan = (value: unknown) => parseKept(value, planRecordSchema);

/** The repository over tables, videos and marks of any kind. */
export function createRepository({
  records: plainRecords,
  videos,
  lasting,
  marks = createMarks(),
  lock = null,
  now = () => new Date(),
  storage = globalThis.navigator?.storage,
  channel = null,
}: RepositoryParts): Repository {
  const { records, subscribe, report } = watchChanges(plainRecords, channel);
  const findFacts = async (id: string): Promise<RecordingFacts> => {
    const facts = await findKept(records, 'facts', id, readFacts);
    if (facts === null) throw storageProblem('missing');
    return facts;
  };
  const removeVideos = async (ids: readonly string[]) => {
    for (const name of ids.flatMap(videoNamesOf)) await videos.remove(name);
  };
  /** Videos from before a moment that nothing needs any more. */
  const oldVideos = async (before: string) => {
    const sizes = new Map((await videos.list()).map(({ name, bytes }) => [name, bytes]));
    return (await listKept(records, 'facts', readFacts)).found.flatMap((facts) => {
      const { createdAt, video, fromVideo } = facts;
      if (video === null || fromVideo === 'waiting' || createdAt >= before) return [];
      return [{ facts, video, bytes: sizes.get(video) ?? 0 }];
    });
  };

  return {
    subscribe,
    reportDeleted: (patient) => report([{ kind: 'patient-deleted', patient }]),
    lasting,
    lock,
    sessions: {
      async list() {
        const listed = await listKept(records, 'visits', readSession);
        listed.found.sort(newestFirst(({ startedAt }) => startedAt));
        return listed;
      },
      find: (id) => findKept(records, 'visits', id, readSession),
      save: async (session) => records.apply(savingSession(session)),
      async remove(id) {
        const { found } = await listKept(records, 'facts', readFacts);
        const ids = found.filter(({ visitId: sessionId }) => sessionId === id).map((facts) => facts.id);
        await records.apply([{ remove: 'visits', key: id }, ...ids.flatMap(removingRecording)]);
        await removeVideos(ids);
      },
    },
    recordings: {
      async list() {
        const listed = await listKept(records, 'facts', readFacts);
        listed.found.sort(newestFirst(({ createdAt }) => createdAt));
        return listed;
      },
      async find(id) {
        const recording = await loadKeptRecording(records, id);
        return recording === null ? null : { recording, facts: await findFacts(id) };
      },
      async findHead(id) {
        const recording = await loadKeptHead(records, id);
        return recording === null ? null : { recording, facts: await findFacts(id) };
      },
      save: async (recording, beside) => records.apply(savingRecording(recording, beside)),
      async update(recording) {
        const checked = readRecordingHead(recording);
        const { id, setup } = checked;
        const before = await records.get('sessions', id);
        const facts: RecordingFacts = {
          ...(await findFacts(id)),
          task: setup.task,
          limitsSet: lastLimits(checked),
        };
        await records.apply([
          { replace: 'sessions', key: id, value: checked },
          { replace: 'facts', key: id, value: facts },
          ...(hasJoints(before) ? [puttingJoints(readRecording(before))] : []),
        ]);
      },
      async replaceFromVideo(recording) {
        const checked = readRecording(recording);
        const { id } = checked;
        const facts: RecordingFacts = { ...(await findFacts(id)), fromVideo: 'done' };
        await records.apply([
          { replace: 'sessions', key: id, value: recordingHead(checked) },
          { replace: 'facts', key: id, value: facts },
          puttingJoints(checked),
          ...removingTracking(id),
        ]);
      },
      async setFromVideo(id, fromVideo) {
        const facts: RecordingFacts = { ...(await findFacts(id)), fromVideo };
        await records.apply([{ replace: 'facts', key: id, value: facts }, ...removingTracking(id)]);
      },
      async remove(id) {
        await records.apply(removingRecording(id));
        await removeVideos([id]);
      },
    },
    plans: {
      async list() {
        const listed = await listKept(records, 'plans', readPlan);
        listed.found.sort(newestFirst(({ savedAt }) => savedAt));
        return listed;
      },
      find: async (id) => (await findKept(records, 'plans', id, readPlan))?.text ?? null,
      async save(id, text, savedAt = now().toISOString()) {
        const plan: PlanRecord = { id, savedAt, text };
        if (!planRecordSchema.safeParse(plan).success || !isJson(text)) {
          throw new StorageProblem(
            'damaged',
            'This plan can’t be kept: it is not a document that this program writes. Ask for it again where it came from.',
          );
        }
        await records.apply([{ put: 'plans', key: id, value: plan }]);
      },
      remove: (id) => records.apply([{ remove: 'plans', key: id }]),
    },
    notes: {
      async read() {
        const notes = new Map<string, string>();
        for (const { key, value } of await records.list('notes'))
          if (typeof value === 'string') notes.set(key, value);
        return notes;
      },
      write: (name, text) => records.apply([{ put: 'notes', key: name, value: text }]),
      remove: (name) => records.apply([{ remove: 'notes', key: name }]),
    },
    videos: { read: (name) => videos.read(name), list: () => videos.list() },
    ...createSets(records, videos, marks),
    trackingRows: createTrackingRows(records),
    takeTurn: (work, signal) => marks.hold(`overfoot-turn:${work}`, signal),
    async space() {
      const { usage, quota } = (await storage?.estimate().catch(() => undefined)) ?? {};
      if (usage === undefined || quota === undefined) return null;
      return { usedBytes: usage, freeBytes: Math.max(0, quota - usage) };
    },
    async freeVideos(before) {
      let freed = 0;
      for (const { facts, video, bytes } of await oldVideos(before)) {
        await records.apply([{ replace: 'facts', key: facts.id, value: { ...facts, video: null } }]);
        await videos.remove(video);
        freed += bytes;
      }
      return freed;
    },
    freeableBytes: async (before) => (await oldVideos(before)).reduce((sum, { bytes }) => sum + bytes, 0),
    async eraseAll() {
      const held = await marks.held();
      if ([...held].some((name) => name.startsWith(setMark))) throw storageProblem('other-tab');
      await eraseKept(records, videos);
    },
    askToPersist: async () => (await storage?.persist().catch(() => false)) ?? false,
    close: () => records.close(),
  };
}

function newestFirst<Value>(dateOf: (value: Value) => string): (a: Value, b: Value) => number {
  return (a, b) => Date.parse(dateOf(b)) - Date.parse(dateOf(a));
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
