import type { Kept, Shelves } from '../shelves';
import { explainStorage, StorageProblem, storageProblem } from '../storageProblem';
import type { Tabs } from '../tabs';
import { createCipher, type Cipher } from './cipher';
import { copyKept, type CopiedKept } from './copyKept';
import { plainKept } from './plainKept';
import { createSealedRecords } from './sealedRecords';
import { createSealedVideos, sealedName } from './sealedVideos';
import { checkStep, proveStep, writeReady, type FoundLock, type StoredLock } from './storedLock';
import { unwrapKey } from './wrapKey';

/** A device whose lock is on, before the passphrase is entered. */
export interface LockedDevice {
  /** Whether the lock itself is damaged or gone, so that no passphrase opens it. */
  readonly isDamaged: boolean;
  /**
   * Opens it, and finishes what turning the lock on or off left to do.
   *
   * @param onProgress  called with how many of the records and videos are done
   * @throws StorageProblem  'wrong-passphrase', 'lock-changed'
   */
  unlock(passphrase: string, onProgress: (done: number, total: number) => void): Promise<void>;
  /** Deletes everything that is kept, and the lock: for somebody who has lost the passphrase. */
  eraseAll(): Promise<void>;
}

/** A shelf in use. */
export interface UsedShelf {
  shelf: number;
  /** As it lies on the device. */
  plain: Kept;
  /** To be read and written as if there were no lock. */
  kept: Kept;
  /** Why what was asked of the lock could not be done; null where there is nothing to tell. */
  lockProblem: StorageProblem | null;
}

export interface LockedParts {
  shelves: Shelves;
  tabs: Tabs;
  used: { shelf: number; plain: Kept };
  /** 'damaged' where it can't be read or is gone. */
  lock: FoundLock | 'damaged';
  ask: (device: LockedDevice) => Promise<void>;
}

/** Asks for the passphrase, and does what is left to do. */
export async function openLocked({ shelves, tabs, used, lock, ask }: LockedParts): Promise<UsedShelf> {
  let opened: UsedShelf = { ...used, kept: plainKept(used.plain), lockProblem: null };
  await ask({
    isDamaged: lock === 'damaged',
    async unlock(passphrase, onProgress) {
      if (lock === 'damaged') throw storageProblem('lock-damaged');
      opened = await unlockShelf({ shelves, tabs, used, lock, passphrase, onProgress });
    },
    async eraseAll() {
      opened = await tabs.alone(() => startAfresh(shelves, used));
    },
  });
  return opened;
}

/** Removes every shelf, and makes an empty one. */
export async function startAfresh(shelves: Shelves, used: LockedParts['used']): Promise<UsedShelf> {
  used.plain.records.close();
  for (const shelf of await shelves.list()) await shelves.remove(shelf);
  await shelves.forgetRest();
  const shelf = used.shelf + 1;
  const plain = { records: await shelves.openRecords(shelf), videos: await shelves.openVideos(shelf) };
  await writeReady(plain.records, null);
  return { shelf, plain, kept: plainKept(plain), lockProblem: null };
}

interface Unlocking extends Omit<LockedParts, 'lock' | 'ask'> {
  lock: FoundLock;
  passphrase: string;
  onProgress: (done: number, total: number) => void;
}

async function unlockShelf({
  shelves,
  tabs,
  used,
  lock,
  passphrase,
  onProgress,
}: Unlocking): Promise<UsedShelf> {
  const { plain } = used;
  const cipher = await createCipher(await unwrapKey(lock.sealedKey, passphrase));
  /** What is in use until the copy is complete, and what the copy is sealed with: null where it is plain. */
  const moved = async (
    step: keyof typeof undoneWords,
    from: CopiedKept,
    next: Cipher | null,
  ): Promise<UsedShelf> => {
    try {
      const locked: StoredLock | null =
        next === null
          ? null
          : { step: 'sealed', sealedKey: lock.sealedKey, proof: await proveStep(next, 'sealed') };
      const startsEmpty = lock.step === 'sealing' && lock.startsEmpty;
      const fresh = await tabs.alone(() =>
        moveShelf({ shelves, used, from: startsEmpty ? null : from, next, lock: locked, onProgress }),
      );
      return { ...fresh, lockProblem: null };
    } catch (error) {
      return { ...used, kept: from, lockProblem: undone(step, explainStorage(error)) };
    }
  };
  switch (lock.step) {
    case 'sealing':
      return moved(lock.step, plainKept(plain), cipher);
    case 'sealed':
      await checkStep(cipher, 'sealed', lock.proof);
      return { ...used, kept: sealedKept(plain, cipher), lockProblem: null };
    case 'opening':
      await checkStep(cipher, 'opening', lock.proof);
      return moved(lock.step, sealedKept(plain, cipher), null);
    case 'changing': {
      const earlier = await createCipher(
        await cipher.open(lock.earlierKey.slice(), 'lock changing').catch((error: unknown) => {
          throw storageProblem('lock-changed', error);
        }),
      );
      return moved(lock.step, sealedKept(plain, earlier), cipher);
    }
    case 'earlier':
      return moved(lock.step, sealedKept(plain, cipher, lock.state), cipher);
  }
}

/** @param mixed  what an earlier version was about to do where plain and sealed lie side by side */
function sealedKept(
  { records, videos }: Kept,
  cipher: Cipher,
  mixed?: 'sealing' | 'sealed' | 'opening',
): CopiedKept {
  return {
    raw: { records, videos: { ...videos, read: (name) => videos.read(sealedName(name)) } },
    records: createSealedRecords(records, cipher, mixed !== undefined),
    videos: createSealedVideos(
      videos,
      cipher,
      mixed === undefined ? 'none' : mixed === 'opening' ? 'second' : 'first',
    ),
  };
}

interface Move {
  shelves: Shelves;
  used: { shelf: number; plain: Kept };
  /** Null where nothing is to be taken along. */
  from: CopiedKept | null;
  /** What the new shelf is sealed with; null where it is plain. */
  next: Cipher | null;
  lock: StoredLock | null;
  onProgress: (done: number, total: number) => void;
}

/**
 * Copies what is kept to a new shelf, and then removes the old one. Where that fails, or the page is closed,
 * the old shelf is as it was.
 */
export async function moveShelf({
  shelves,
  used,
  from,
  next,
  lock,
  onProgress,
}: Move): Promise<Omit<UsedShelf, 'lockProblem'>> {
  const shelf = used.shelf + 1;
  await shelves.remove(shelf); // What an interrupted move left.
  const records = await shelves.openRecords(shelf);
  try {
    const plain = { records, videos: await shelves.openVideos(shelf) };
    const kept = next === null ? plainKept(plain) : sealedKept(plain, next);
    if (from !== null) await copyKept(from, kept, onProgress);
    await writeReady(records, lock);
    used.plain.records.close();
    // Where this fails, the next opening does it.
    await shelves.remove(used.shelf).catch(() => undefined);
    return { shelf, plain, kept };
  } catch (error) {
    records.close();
    await shelves.remove(shelf).catch(() => undefined);
    throw error;
  }
}

const undoneWords = {
  sealing: 'What is kept here is not sealed, and can still be read on this device.',
  opening: 'The lock is still on.',
  changing: 'What is kept here is still sealed with the earlier key.',
  earlier: 'What is kept here stays sealed as an earlier version of this program did it.',
};

/** The problem with what it means for the lock. */
function undone(step: keyof typeof undoneWords, problem: StorageProblem): StorageProblem {
  const room =
    problem.reason === 'full'
      ? 'There is not enough room: while the lock is changed, everything is kept twice. Delete old videos or other files, then reload this page.'
      : problem.message;
  return new StorageProblem(problem.reason, `${undoneWords[step]} ${room}`, { cause: problem });
}
