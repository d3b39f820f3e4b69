import { tableOf, type Edition, type RecordChange, type Records, type TableName } from './records';
import { StorageProblem } from './storageProblem';

/** What changed since digests were last brought up to date. */
export interface ChangedRecord {
  /** 'gone': something was deleted; nothing says what, since nothing of it is to stay. */
  kind: 'session' | 'recording' | 'plan' | 'gone';
  /** Empty for what is gone. */
  id: string;
  edition: Edition;
}

/** What was worked out from the sessions of one patient. Plain data. */
export interface PatientDigest {
  patientId: string;
  /** Small: those of all patients are read together. */
  overview: unknown;
  /** Everything that the patient's page shows. */
  course: unknown;
}

/**
 * What is worked out from sessions and takes long to work out, so that hundreds of patients are listed at once. It can
 * always be worked out again. Every change of a session, recording or plan leaves a mark in the same transaction, so
 * that what is out of date is known even after a crash.
 */
export interface Digests {
  /** Untrusted, as written by whatever version; those that can't be read are left out. */
  overviews(): Promise<{ patientId: string; value: unknown }[]>;
  /** Undefined where there is none, or it can't be read. */
  course(patientId: string): Promise<unknown>;
  changed(): Promise<ChangedRecord[]>;
  /** How everything was worked out when it last was; null before that. */
  builtAs(): Promise<string | null>;
  setBuiltAs(version: string): Promise<void>;
  /**
   * Keeps digests, and takes away the marks of what they hold. A mark that was set again meanwhile stays.
   *
   * @param emptied  patients without sessions by now, whose digests go
   */
  save(
    digests: readonly PatientDigest[],
    settled: readonly ChangedRecord[],
    emptied?: readonly string[],
  ): Promise<void>;
}

const builtKey = 'built';
const prefixes = { overview: 'overview:', course: 'course:', changed: 'changed:' };

const kinds: Partial<Record<TableName, ChangedRecord['kind']>> = {
  visits: 'session',
  facts: 'recording',
  plans: 'plan',
};

export function createDigests(records: Records): Digests {
  const apply = async (changes: readonly RecordChange[]) => {
    if (changes.length > 0) await records.apply(changes); // A transaction of nothing is an error.
  };
  const changed = async (): Promise<ChangedRecord[]> => {
    const listed = await records.list('digests', prefixes.changed);
    return listed.map(({ key, edition }) => {
      const [, kind, id] = key.split(':') as [string, ChangedRecord['kind'], string];
      return { kind, id, edition };
    });
  };

  return {
    changed,
    async overviews() {
      const listed = await records.list('digests', prefixes.overview);
      return listed.map(({ key, value }) => ({ patientId: key.slice(prefixes.overview.length), value }));
    },
    course: (patientId) => records.get('digests', prefixes.course + patientId).catch(() => undefined),
    async builtAs() {
      const built = await records.get('digests', builtKey).catch(() => null);
      return typeof built === 'string' ? built : null;
    },
    async setBuiltAs(version) {
      await records.apply([{ put: 'digests', key: builtKey, value: version }]);
    },
    async save(digests, settled, emptied = []) {
      const kept = [
        ...emptied.flatMap(digestsOf),
        ...digests.flatMap(({ patientId, overview, course }): RecordChange[] => [
          { put: 'digests', key: prefixes.overview + patientId, value: overview },
          { put: 'digests', key: prefixes.course + patientId, value: course },
        ]),
      ];
      const removing = ({ kind, id, edition }: ChangedRecord): RecordChange => ({
        remove: 'digests',
        key: `${prefixes.changed}${kind}:${id}`,
        expects: edition,
      });
      try {
        await apply([...kept, ...settled.map(removing)]);
      } catch (error) {
        if (!(error instanceof StorageProblem && error.reason === 'changed')) throw error;
        const editions = new Set((await changed()).map(({ edition }) => edition));
        await apply([...kept, ...settled.filter(({ edition }) => editions.has(edition)).map(removing)]);
      }
    },
  };
}

/** The changes that delete what was worked out for a patient. */
export function digestsOf(patientId: string): RecordChange[] {
  return [
    { remove: 'digests', key: prefixes.overview + patientId },
    { remove: 'digests', key: prefixes.course + patientId },
  ];
}

/** Records in which every change of what digests are made of leaves its mark. */
export function withMarks(records: Records): Records {
  return {
    ...records,
    async apply(changes) {
      const editions = await records.apply([...changes, ...marksOf(changes)]);
      return editions.slice(0, changes.length);
    },
  };
}

function marksOf(changes: readonly RecordChange[]): RecordChange[] {
  const marks = new Map<string, RecordChange>();
  const mark = (key: string) => marks.set(key, { put: 'digests', key, value: crypto.randomUUID() });
  for (const change of changes) {
    const kind = kinds[tableOf(change)];
    if (kind === undefined) continue;
    const key = `${prefixes.changed}${kind}:${change.key}`;
    if ('value' in change) mark(key);
    else if (change.andBelow !== true) {
      marks.set(key, { remove: 'digests', key });
      mark(`${prefixes.changed}gone:`);
    }
  }
  return [...marks.values()];
}
