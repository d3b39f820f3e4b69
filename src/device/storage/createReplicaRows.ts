import type { SharedKind } from '#documents/practice/sharedHead';
import { readSession } from '#documents/session/readSession';
import { libraryNote } from './keptLibrary';
import { planRecordSchema } from './keptSchemas';
import { parseKept } from './parseKept';
import type { Records, TableName } from './records';
import type { Changeable, ReplicaRows } from './replicaRows';
import { StorageProblem } from './storageProblem';

const tables = {
  library: 'notes',
  patient: 'patients',
  plan: 'plans',
  session: 'visits',
  recording: 'sessions',
} satisfies Record<Exclude<SharedKind, 'piece'>, TableName>;

/** Tabs that change one document at once are few. */
const mostAttempts = 5;

export function createReplicaRows(records: Records): ReplicaRows {
  const readerOf = async <Kind extends keyof Changeable>(
    kind: Kind,
  ): Promise<(value: unknown) => Changeable[Kind]> => {
    const readers: { [Each in keyof Changeable]: (value: unknown) => Changeable[Each] } = {
      patient: (await import('#documents/patient/readPatient')).readPatient,
      plan: (value) => parseKept(value, planRecordSchema),
      session: readSession,
    };
    return readers[kind];
  };
  const find = async <Kind extends keyof Changeable>(kind: Kind, id: string) => {
    const read = await readerOf(kind);
    const kept = await records.find(tables[kind], id);
    return kept === null ? null : { value: read(kept.value), edition: kept.edition };
  };
  return {
    get: (key) => records.get('replica', key).catch(() => undefined),
    async list(prefix) {
      const listed = await records.list('replica', prefix);
      return listed.filter(({ value }) => !(value instanceof Error));
    },
    async put(key, value) {
      await records.apply([{ put: 'replica', key, value }]);
    },
    async remove(key) {
      await records.apply([{ remove: 'replica', key }]);
    },
    async editions(kind) {
      const listed = await records.list(tables[kind]);
      return listed
        .filter(({ key }) => kind !== 'library' || key === libraryNote)
        .map(({ key, edition }) => ({ id: key, edition }));
    },
    find: async (kind, id) => (await find(kind, id))?.value ?? null,
    async change(kind, id, change) {
      const read = await readerOf(kind);
      for (let attempt = 1; ; attempt++) {
        const kept = await find(kind, id);
        const before = kept?.value ?? null;
        const after = change(before);
        if (after === before || after === null) return;
        const expects = kept?.edition ?? null;
        try {
          await records.apply([{ put: tables[kind], key: id, value: read(after), expects }]);
          return;
        } catch (error) {
          const isRetried = error instanceof StorageProblem && error.reason === 'changed';
          if (!isRetried || attempt === mostAttempts) throw error;
        }
      }
    },
  };
}
