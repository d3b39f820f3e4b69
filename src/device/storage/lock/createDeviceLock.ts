import type { Records } from '../records';
import { storageProblem, type StorageProblem } from '../storageProblem';
import type { Tabs } from '../tabs';
import { createCipher, newKey } from './cipher';
import { checkStep, loadLock, loadReady, proveStep, writeLock } from './storedLock';
import { unwrapKey, wrapKey } from './wrapKey';

/**
 * The passphrase lock of what is kept on this device. Turning it on or off, or changing its passphrase, only
 * records what is to be done. The work is done at the next opening, right after the passphrase is entered and
 * before anything else is read or written.
 */
export interface DeviceLock {
  /** Why what was asked for last could not be done; null where it was. */
  readonly problem: StorageProblem | null;
  /** Whether what was kept in plain can't be read from the disk any more once it is sealed. */
  readonly leavesNothing: boolean;
  /** Whether all that is kept is sealed. */
  isOn(): Promise<boolean>;
  /**
   * @param startsEmpty  whether what is kept is to be deleted instead of sealed
   * @throws StorageProblem  'other-tab' while another tab is open, 'unsupported' over http
   */
  turnOn(passphrase: string, startsEmpty?: boolean): Promise<void>;
  /** @throws StorageProblem  'wrong-passphrase', 'other-tab' */
  turnOff(passphrase: string): Promise<void>;
  /** Everything is sealed with a new key. @throws StorageProblem  'wrong-passphrase', 'other-tab' */
  changePassphrase(passphrase: string, next: string): Promise<void>;
}

interface Parts {
  /** As stored in the database, sealed or not. */
  records: Records;
  tabs: Tabs;
  leavesNothing: boolean;
  problem: StorageProblem | null;
  /** log2 of the cost of trying a passphrase; age's default if left out. */
  scryptWorkFactor?: number | undefined;
}

export function createDeviceLock({
  records,
  tabs,
  leavesNothing,
  problem,
  scryptWorkFactor,
}: Parts): DeviceLock {
  /** The key of a shelf that is sealed. */
  const openedKey = async (passphrase: string) => {
    const lock = await loadLock(records);
    if (lock === null || !('proof' in lock)) throw storageProblem('missing');
    const key = await unwrapKey(lock.sealedKey, passphrase);
    const cipher = await createCipher(key);
    await checkStep(cipher, lock.step, lock.proof);
    return { key, cipher, sealedKey: lock.sealedKey };
  };
  return {
    problem,
    leavesNothing,
    isOn: async () => (await loadReady(records)) === 'sealed',
    async turnOn(passphrase, startsEmpty = false) {
      // Pages over http have no ciphers: locked data could not be opened again.
      if ((crypto as Partial<Crypto>).subtle === undefined) throw storageProblem('unsupported');
      await tabs.assertAlone();
      const sealedKey = await wrapKey(newKey(), passphrase, scryptWorkFactor);
      await writeLock(records, { step: 'sealing', sealedKey, startsEmpty });
    },
    async turnOff(passphrase) {
      await tabs.assertAlone();
      const { cipher, sealedKey } = await openedKey(passphrase);
      await writeLock(records, { step: 'opening', sealedKey, proof: await proveStep(cipher, 'opening') });
    },
    async changePassphrase(passphrase, next) {
      await tabs.assertAlone();
      const { key } = await openedKey(passphrase);
      const nextKey = newKey();
      const sealedKey = await wrapKey(nextKey, next, scryptWorkFactor);
      const earlierKey = await (await createCipher(nextKey)).seal(key, 'lock changing');
      await writeLock(records, { step: 'changing', sealedKey, earlierKey });
    },
  };
}
