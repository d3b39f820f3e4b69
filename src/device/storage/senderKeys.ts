import { Dexie, type DexieOptions, type Table } from 'dexie';
import { explainStorage } from './storageProblem';

/**
 * The keys with which this device signs the sessions that it sends, one for each plan. They are kept apart from
 * everything else, since the browser keeps a key that can't be read as an object, not as bytes that could be
 * sealed.
 */
export interface SenderKeys {
  /** Null where there is none. */
  find(planId: string): Promise<CryptoKeyPair | null>;
  keep(planId: string, pair: CryptoKeyPair): Promise<void>;
  forgetAll(): Promise<void>;
}

interface Row {
  key: string;
  value: CryptoKeyPair;
}

export function openSenderKeys(options: DexieOptions = {}): SenderKeys {
  const database = new Dexie('overfoot-sender', options);
  database.version(1).stores({ keys: 'key' });
  const keys: Table<Row, string> = database.table('keys');
  const explained = <Value>(work: PromiseLike<Value>): Promise<Value> =>
    Promise.resolve(work).catch((error: unknown) => {
      throw explainStorage(error);
    });
  return {
    find: (planId) => explained(keys.get(planId).then((row) => row?.value ?? null)),
    keep: (planId, pair) => explained(keys.put({ key: planId, value: pair }).then(() => undefined)),
    forgetAll: () => explained(keys.clear()),
  };
}
