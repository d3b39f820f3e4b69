import type { Marks } from '../marks';
import type { Records } from '../records';
import { storageProblem } from '../storageProblem';
import { loadLock, writeLock } from './storedLock';
import { unwrapKey, wrapKey } from './wrapKey';

/** Prefix of the mark held by every tab that has the repository open. */
const openMark = 'overfoot-open:';

/**
 * The passphrase lock of what is kept on this device. Turning it on or off only records what is to be done.
 * The work is done at the next opening, right after the passphrase is entered and before anything else is
 * read or written.
 */
export interface DeviceLock {
  isOn(): Promise<boolean>;
  /** @throws StorageProblem  'other-tab' while another tab is open, 'unsupported' over http */
  turnOn(passphrase: string): Promise<void>;
  /** @throws StorageProblem  'wrong-passphrase', 'other-tab' */
  turnOff(passphrase: string): Promise<void>;
  /** Only the key is sealed again, not what is kept. @throws StorageProblem  'wrong-passphrase' */
  changePassphrase(passphrase: string, next: string): Promise<void>;
  /** @throws StorageProblem  'other-tab' while another tab is open */
  assertAlone(): Promise<void>;
}

/**
 * @param records  as stored in the database, sealed or not
 * @param scryptWorkFactor  log2 of the cost of trying a passphrase; age's default if left out
 */
export async function createDeviceLock(
  records: Records,
  marks: Marks,
  scryptWorkFactor?: number,
): Promise<DeviceLock> {
  const own = `${openMark}${crypto.randomUUID()}`;
  await marks.hold(own); // It is released with the tab.
  const assertAlone = async () => {
    for (const name of await marks.held())
      if (name.startsWith(openMark) && name !== own) throw storageProblem('other-tab');
  };
  const stored = async () => {
    const lock = await loadLock(records);
    if (lock === null) throw storageProblem('missing');
    return lock;
  };
  return {
    isOn: async () => (await loadLock(records)) !== null,
    assertAlone,
    async turnOn(passphrase) {
      // Pages over http have no ciphers: locked data could not be opened again.
      if ((crypto as Partial<Crypto>).subtle === undefined) throw storageProblem('unsupported');
      await assertAlone();
      const sealedKey = await wrapKey(
        crypto.getRandomValues(new Uint8Array(32)),
        passphrase,
        scryptWorkFactor,
      );
      await writeLock(records, { state: 'sealing', sealedKey });
    },
    async turnOff(passphrase) {
      await assertAlone();
      const { sealedKey } = await stored();
      await unwrapKey(sealedKey, passphrase);
      await writeLock(records, { state: 'opening', sealedKey });
    },
    async changePassphrase(passphrase, next) {
      const lock = await stored();
      const sealedKey = await wrapKey(await unwrapKey(lock.sealedKey, passphrase), next, scryptWorkFactor);
      await writeLock(records, { ...lock, sealedKey });
    },
  };
}
