import { createRepository } from './createRepository';
import { createDeviceLock } from './lock/createDeviceLock';
import { openLocked, type LockedDevice } from './lock/openLocked';
import { loadLock } from './lock/storedLock';
import { createMarks } from './marks';
import { createMemoryRecords } from './memoryRecords';
import { createMemoryVideos } from './memoryVideos';
import { openRecords } from './openRecords';
import { openVideos } from './openVideos';
import type { Records } from './records';
import type { Repository } from './repository';
import { explainStorage, storageProblem, type StorageProblem } from './storageProblem';
import type { Videos } from './videos';

export interface OpenedRepository {
  repository: Repository;
  /** Why not everything can be kept on this device; null where it can. */
  problem: StorageProblem | null;
}

/** Ways to open the two kinds of storage; tests pass others. */
export interface StorageOpeners {
  openRecords: () => Promise<Records>;
  openVideos: () => Promise<Videos>;
  /** log2 of the cost of trying the lock's passphrase; age's default if left out. */
  scryptWorkFactor?: number;
}

/** Asks the person for the passphrase; resolves once the device is unlocked, or everything is deleted. */
export type AskForPassphrase = (device: LockedDevice) => Promise<void>;

/** For pages with nobody to ask. */
const refuseToAsk: AskForPassphrase = () => Promise.reject(storageProblem('locked'));

/**
 * Opens what is kept on this device. Where the device refuses, work continues in memory: the problem says
 * why, and `repository.lasting` what will be lost with the tab. What a newer version wrote is never bypassed.
 *
 * @throws StorageProblem  'newer', 'other-tab' or 'locked': something is kept here, and reloading gives
 * access to it
 */
export async function openRepository(
  open: StorageOpeners = { openRecords, openVideos },
  askForPassphrase = refuseToAsk,
): Promise<OpenedRepository> {
  const records = await settle(open.openRecords());
  if (records.problem?.reason === 'newer' || records.problem?.reason === 'other-tab') throw records.problem;
  // Videos without records of what they show would be useless.
  const videos = records.problem === null ? await settle(open.openVideos()) : records;
  const plain = {
    records: records.value ?? createMemoryRecords(),
    videos: videos.problem === null ? videos.value : createMemoryVideos(),
  };
  const lasting = { records: records.problem === null, videos: videos.problem === null };
  const marks = createMarks();
  const lock = await createDeviceLock(plain.records, marks, open.scryptWorkFactor);
  const stored = await loadLock(plain.records);
  const { lockProblem, ...kept } =
    stored === null
      ? { ...plain, lockProblem: null }
      : await openLocked(plain, stored, lock, askForPassphrase);
  if (lasting.records && lasting.videos) await removeForsakenVideos(kept.records, kept.videos);
  return {
    repository: createRepository({
      ...kept,
      lasting,
      marks,
      lock: lasting.records ? lock : null,
      channel: lasting.records ? openChannel() : null,
    }),
    problem: records.problem ?? videos.problem ?? lockProblem,
  };
}

/** To the program's other tabs; in Node, which has none, it would keep the process alive. */
function openChannel(): BroadcastChannel | null {
  return typeof document === 'undefined' ? null : new BroadcastChannel('overfoot-changes');
}

/** Deletes videos that belong to nothing: their set was deleted, and the page closed before the video was. */
async function removeForsakenVideos(records: Records, videos: Videos): Promise<void> {
  try {
    // In this order nothing in use is missed: a set has its record before its video, and a finished one has its
    // facts before its record is removed.
    const names = await videos.list();
    const owners = [...(await records.list('sets')), ...(await records.list('facts'))].map(({ key }) => key);
    for (const { name } of names) {
      if (!owners.some((id) => name.startsWith(`${id}.`))) await videos.remove(name);
    }
  } catch {
    // Nothing depends on it; it is retried next time.
  }
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
