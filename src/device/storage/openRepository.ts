import { browserShelves } from './browserShelves';
import { besideMark } from './createKeepTogether';
import { createRepository } from './createRepository';
import { createSwitched } from './createSwitched';
import { createTimelyShelves } from './createTimelyShelves';
import { findShelf } from './findShelf';
import { createDeviceLock } from './lock/createDeviceLock';
import {
  moveShelf,
  openLocked,
  startAfresh,
  type LockedDevice,
  type LockedParts,
  type UsedShelf,
} from './lock/openLocked';
import { plainKept } from './lock/plainKept';
import { loadLock, loadReady } from './lock/storedLock';
import { createMarks, type Marks } from './marks';
import { createMemoryRecords } from './memoryRecords';
import { createMemoryVideos } from './memoryVideos';
import { isVideoOf } from './recordingChanges';
import type { Repository } from './repository';
import type { Kept, Shelves } from './shelves';
import { explainStorage, storageProblem, type StorageProblem } from './storageProblem';
import { enterTabs } from './tabs';

export interface OpenedRepository {
  repository: Repository;
  /** Why not everything can be kept on this device; null where it can. */
  problem: StorageProblem | null;
}

/** Asks the person for the passphrase; resolves once the device is unlocked, or everything is deleted. */
export type AskForPassphrase = (device: LockedDevice) => Promise<void>;

/** For pages with nobody to ask. */
const refuseToAsk: AskForPassphrase = () => Promise.reject(storageProblem('locked'));

/**
 * Opens what is kept on this device. Where the device refuses, work continues in memory: the problem says
 * why, and `repository.lasting` what will be lost with the tab. What a newer version wrote is never bypassed.
 *
 * @param shelves  where things are kept; tests pass others
 * @param scryptWorkFactor  log2 of the cost of trying the lock's passphrase; age's default if left out
 * @throws StorageProblem  'newer', 'other-tab', 'silent' or 'locked': something is kept here, and reloading
 * gives access to it
 */
export async function openRepository(
  shelves: Shelves = createTimelyShelves(browserShelves()),
  askForPassphrase = refuseToAsk,
  scryptWorkFactor?: number,
): Promise<OpenedRepository> {
  const marks = createMarks();
  const tabs = await enterTabs(marks);
  const found = await settle(findShelf(shelves, tabs));
  if (found.problem !== null) {
    if (['newer', 'other-tab', 'silent'].includes(found.problem.reason)) throw found.problem;
    const kept = { records: createMemoryRecords(), videos: createMemoryVideos() };
    const lasting = { records: false, videos: false };
    return { repository: createRepository({ ...kept, lasting, marks }), problem: found.problem };
  }
  const { shelf, records } = found.value;
  // Videos without records of what they show would be useless.
  const videos = await settle(shelves.openVideos(shelf));
  const plain = { records, videos: videos.value ?? createMemoryVideos() };
  const used = await openShelf({ shelves, tabs, used: { shelf, plain }, ask: askForPassphrase });
  const switched = createSwitched(used.kept);
  if (videos.problem === null) await removeForsakenVideos(switched.kept, marks);
  return {
    repository: createRepository({
      ...switched.kept,
      lasting: { records: true, videos: videos.problem === null },
      marks,
      lock: createDeviceLock({
        records: used.plain.records,
        tabs,
        leavesNothing: shelves.leavesNothing,
        problem: used.lockProblem,
        scryptWorkFactor,
      }),
      storage: await shelves.storageOf(used.shelf).catch(() => undefined),
      async startAfresh() {
        const fresh = await tabs.alone(() => startAfresh(shelves, used));
        Object.assign(used, fresh);
        switched.to(fresh.kept);
      },
      channel: openChannel(),
    }),
    problem: videos.problem,
  };
}

/** The shelf in use, with the passphrase asked for where it is locked. */
async function openShelf(parts: Omit<LockedParts, 'lock'>): Promise<UsedShelf> {
  const { shelves, tabs, used } = parts;
  const { records } = used.plain;
  const lock = await loadLock(records).catch(() => 'damaged' as const);
  const isBroken = lock === 'damaged' || (lock === null && (await loadReady(records)) === 'sealed');
  if (lock !== null || isBroken) return openLocked({ ...parts, lock: isBroken ? 'damaged' : lock! });
  const plain = { ...used, kept: plainKept(used.plain), lockProblem: null };
  if (used.shelf > 0) return plain;
  // From an earlier version: it goes to a shelf that can be removed as a whole.
  const move = { shelves, used, from: plain.kept, next: null, lock: null, onProgress: () => undefined };
  const moved = await settle(tabs.alone(() => moveShelf(move)));
  return moved.value === null ? plain : { ...moved.value, lockProblem: null };
}

/** To the program's other tabs; in Node, which has none, it would keep the process alive. */
function openChannel(): BroadcastChannel | null {
  return typeof document === 'undefined' ? null : new BroadcastChannel('overfoot-changes');
}

/**
 * Deletes videos that belong to nothing: their set was deleted or the video replaced, and the page closed
 * before it was deleted; or it was still being written.
 */
async function removeForsakenVideos({ records, videos }: Kept, marks: Marks): Promise<void> {
  try {
    // In this order nothing in use is missed: a set has its record before its video, a finished one has its facts
    // before its record is removed, and what is written beside has its mark before its video and until its facts.
    const names = await videos.list();
    const held = await marks.held();
    const sets = await records.keys('sets');
    const facts = await records.list('facts');
    for (const { name } of names) {
      const isOwn = (id: string) => isVideoOf(id, name);
      const owner = facts.find(({ key }) => isOwn(key));
      const isNamed = owner !== undefined && (videoNamed(owner.value) ?? name) === name;
      if (!isNamed && !sets.some(isOwn) && !held.has(besideMark(name))) await videos.remove(name);
    }
  } catch {
    // Nothing depends on it; it is retried next time.
  }
}

/** The video that a recording's facts name; undefined where they can't be read. */
function videoNamed(facts: unknown): string | undefined {
  const { video } = (typeof facts === 'object' && facts !== null ? facts : {}) as { video?: unknown };
  return video === null ? '' : typeof video === 'string' ? video : undefined;
}

async function settle<Value>(
  opening: Promise<Value>,
): Promise<{ value: Value; problem: null } | { value: null; problem: StorageProblem }> {
  try {
    return { value: await opening, problem: null };
  } catch (error) {
    return { value: null, problem: explainStorage(error) };
  }
}
