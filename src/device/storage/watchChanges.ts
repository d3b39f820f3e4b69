import type { RecordChange, Records, TableName } from './records';

/** Something that is kept was added, changed or removed. */
export type KeptChange =
  /** The id is null where it may be any of the kind. */
  | { kind: 'sessions' | 'recordings' | 'plans' | 'notes'; id: string | null }
  /** Everything of a patient was deleted. */
  | { kind: 'patient-deleted'; patient: string };

/** Carries changes to and from the program's other tabs. */
export type ChangeChannel = Pick<BroadcastChannel, 'postMessage' | 'addEventListener'>;

const kinds: Partial<Record<TableName, Exclude<KeptChange['kind'], 'patient-deleted'>>> = {
  visits: 'sessions',
  sessions: 'recordings',
  facts: 'recordings',
  plans: 'plans',
  notes: 'notes',
};

/**
 * Records whose changes are reported, wherever they were made.
 *
 * @param channel  to the other tabs; null where there is none
 */
export function watchChanges(records: Records, channel: ChangeChannel | null) {
  const listeners = new Set<(change: KeptChange) => void>();
  const tell = (changes: readonly KeptChange[]) =>
    changes.forEach((change) => listeners.forEach((listener) => listener(change)));
  channel?.addEventListener('message', ({ data }) => tell(data as KeptChange[]));
  const report = (changes: readonly KeptChange[]) => {
    tell(changes);
    channel?.postMessage(changes);
  };
  const watched: Records = {
    get: (table, key) => records.get(table, key),
    keys: (table) => records.keys(table),
    list: (table, prefix) => records.list(table, prefix),
    async apply(changes) {
      await records.apply(changes);
      const told = toldOf(changes);
      if (told.length > 0) report(told);
    },
    close: () => records.close(),
  };
  return {
    records: watched,
    /** @returns the way to stop */
    subscribe(listener: (change: KeptChange) => void): () => void {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    /** Reports what no single record tells. */
    report,
  };
}

/** What changes of tables mean, each once. */
function toldOf(changes: readonly RecordChange[]): KeptChange[] {
  const told = new Map<string, KeptChange>();
  for (const change of changes) {
    const table = 'put' in change ? change.put : 'replace' in change ? change.replace : change.remove;
    const kind = kinds[table];
    const id = 'andBelow' in change && change.andBelow === true ? null : change.key;
    if (kind !== undefined) told.set(`${kind} ${id}`, { kind, id });
  }
  return [...told.values()];
}
