import { readRecording } from '#documents/recording/readRecording';
import { readRecordingHead } from '#documents/recording/readRecordingHead';
import { recordingHead } from '#documents/recording/recordingHead';
import { readSession } from '#documents/session/readSession';
import { createDigests, withMarks } from './createDigests';
import { createKeepTogether } from './createKeepTogether';
import { createPatients } from './createPatients';
import { createReplicaRows } from './createReplicaRows';
import { createSets, savingSession } from './createSets';
import { createTrackingRows } from './createTrackingRows';
import { eraseKept } from './eraseKept';
import { createKeptLibrary } from './keptLibrary';
import { hasJoints, loadKeptHead, loadKeptRecording } from './keptRecording';
import { planRecordSchema, recordingFactsSchema, type PlanRecord, type RecordingFacts } from './keptSchemas';
import type { DeviceLock } from './lock/createDeviceLock';
import { createMarks, type Marks } from './marks';
import { findKept, listKept, parseKept } from './parseKept';
import {
  lastLimits,
  puttingJoints,
  removeVideosOf,
  removingRecording,
  removingTracking,
  savingRecording,
  workingSide,
} from './recordingChanges';
import type { Records } from './records';
import type { Repository } from './repository';
import { setMark } from './setMark';
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
  /** Removes everything from the disk, and goes on with an empty device; where left out, it is only deleted. */
  startAfresh?: (() => Promise<void>) | undefined;
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
  startAfresh,
  channel = null,
}: RepositoryParts): Repository {
  const { records, subscribe, report, reportAll } = watchChanges(withMarks(plainRecords), channel);
  const findFacts = async (id: string): Promise<RecordingFacts> => {
    const facts = await findKept(records, 'facts', id, readFacts);
    if (facts === null) throw storageProblem('missing');
    return facts;
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
      ids: () => records.keys('visits'),
      find: (id) => findKept(records, 'visits', id, readSession),
      async save(session) {
        await records.apply(savingSession(session));
      },
      async remove(id) {
        const { found } = await listKept(records, 'facts', readFacts);
        const ids = found.filter(({ visitId: sessionId }) => sessionId === id).map((facts) => facts.id);
        await records.apply([{ remove: 'visits', key: id }, ...ids.flatMap(removingRecording)]);
        await removeVideosOf(videos, ids);
      },
    },
    recordings: {
      async list() {
        const listed = await listKept(records, 'facts', readFacts);
        listed.found.sort(newestFirst(({ createdAt }) => createdAt));
        return listed;
      },
      async find(id) {
        const kept = await loadKeptRecording(records, id);
        return kept === null ? null : { ...kept, facts: await findFacts(id) };
      },
      facts: async (ids) => {
        const found = await Promise.all(ids.map((id) => findFacts(id).catch(ifProblem)));
        return found.filter((facts) => facts !== null);
      },
      async findHead(id) {
        const kept = await loadKeptHead(records, id);
        return kept === null ? null : { ...kept, facts: await findFacts(id) };
      },
      async save(recording, beside) {
        await records.apply(savingRecording(recording, beside));
      },
      async update(recording, expects) {
        const checked = readRecordingHead(recording);
        const { id, setup } = checked;
        const before = await records.get('sessions', id);
        const facts: RecordingFacts = {
          ...(await findFacts(id)),
          task: setup.task,
          side: workingSide(checked),
          limitsSet: lastLimits(checked),
        };
        const [edition] = await records.apply([
          { replace: 'sessions', key: id, value: checked, expects },
          { replace: 'facts', key: id, value: facts },
          ...(hasJoints(before) ? [puttingJoints(readRecording(before))] : []),
        ]);
        return edition!;
      },
      async replaceFromVideo(recording, expects) {
        const checked = readRecording(recording);
        const { id } = checked;
        const facts: RecordingFacts = { ...(await findFacts(id)), fromVideo: 'done' };
        await records.apply([
          { replace: 'sessions', key: id, value: recordingHead(checked), expects },
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
        await removeVideosOf(videos, [id]);
      },
    },
    patients: createPatients(records),
    digests: createDigests(records),
    replica: createReplicaRows(records),
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
      async remove(id) {
        await records.apply([{ remove: 'plans', key: id }]);
      },
    },
    library: createKeptLibrary(records),
    notes: {
      async read() {
        const notes = new Map<string, string>();
        for (const { key, value } of await records.list('notes'))
          notes.set(key, typeof value === 'string' ? value : '');
        return notes;
      },
      async write(name, text) {
        await records.apply([{ put: 'notes', key: name, value: text }]);
      },
      async remove(name) {
        await records.apply([{ remove: 'notes', key: name }]);
      },
    },
    videos: { read: (name) => videos.read(name), list: () => videos.list() },
    ...createSets(records, videos, marks),
    keepTogether: createKeepTogether(records, videos, marks),
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
      if (startAfresh === undefined) return eraseKept(records, videos);
      await startAfresh();
      reportAll();
    },
    askToPersist: async () => (await storage?.persist().catch(() => false)) ?? false,
    close: () => records.close(),
  };
}

function newestFirst<Value>(dateOf: (value: Value) => string): (a: Value, b: Value) => number {
  return (a, b) => Date.parse(dateOf(b)) - Date.parse(dateOf(a));
}

/** Null in place of what is gone or can't be read. */
function ifProblem(error: unknown): null {
  if (error instanceof StorageProblem) return null;
  throw error;
}

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
