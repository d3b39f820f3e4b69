import { tableNames, tableOf, type RecordChange, type Records, type TableName } from './records';

/** Something that is kept was added, changed or removed. */
export type KeptChange =
  /** The id is null where it may be any of the kind. */
  | { kind: 'sessions' | 'recordings' | 'plans' | 'notes' | 'patients'; id: string | null }
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
  patients: 'patients',
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
    ...records,
    async apply(changes) {
      const editions = await records.apply(changes);
      const told = toldOf(changes);
      if (told.length > 0) report(told);
      return editions;
    },
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
    /** Reports that everything may have changed. */
    reportAll: () => report(toldOf(tableNames.map((remove) => ({ remove, key: '', andBelow: true })))),
  };
}

/** What changes of tables mean, each once. */
function toldOf(changes: readonly RecordChange[]): KeptChange[] {
  const told = new Map<string, KeptChange>();
  for (const change of changes) {
    const kind = kinds[tableOf(change)];
    const id = 'andBelow' in change && change.andBelow === true ? null : change.key;
    if (kind !== undefined) told.set(`${kind} ${id}`, { kind, id });
  }
  return [...told.values()];
}
