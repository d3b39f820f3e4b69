import type { LibraryDocument } from '#documents/library/libraryDocument';
import type { LibraryNotes, ReadLibrary } from '#documents/library/libraryNotes';
import { parseDocument } from '#documents/reading/readDocument';
import type { KeptRecord, Records } from './records';
import { StorageProblem } from './storageProblem';
import type { KeptChange } from './watchChanges';

/** The practice's library as this device keeps it. */
export interface KeptLibrary {
  /**
   * An empty one where there is none. What belonged to it before is taken over.
   *
   * @throws StorageProblem  'damaged' where it can't be read, ...
   */
  read(): Promise<Omit<ReadLibrary, 'isMigrated'>>;
  /**
   * Changes it as it is by then.
   *
   * @param change  what it returns is kept, and where it is the same, nothing is written
   * @returns  what is kept now
   * @throws StorageProblem  'damaged' where it can't be read: nothing is written over it; 'full', ...
   */
  change(change: (library: LibraryDocument) => LibraryDocument): Promise<LibraryDocument>;
}

/** Name of the small text that holds it. */
export const libraryNote = 'library';
const names = { library: libraryNote, stages: 'stages', templates: 'templates' } as const;

/** Whether a change may be one of the library. */
export function isOfLibrary(change: KeptChange): boolean {
  return change.kind === 'notes' && (change.id === null || change.id in names);
}

/** Tabs that change it at once are few. */
const mostAttempts = 5;

export function createKeptLibrary(records: Records): KeptLibrary {
  /** What is large about it is fetched once it is needed. */
  const parts = async () => {
    const [{ readLibraryNotes }, { libraryKind }] = await Promise.all([
      import('#documents/library/libraryNotes'),
      import('#documents/library/libraryKind'),
    ]);
    return { readLibraryNotes, check: (text: string) => parseDocument(text, libraryKind) };
  };
  const changeOnce = async (change: (library: LibraryDocument) => LibraryDocument) => {
    const { readLibraryNotes, check } = await parts();
    const [library, stages, templates] = await Promise.all([
      find(records, names.library),
      find(records, names.stages),
      find(records, names.templates),
    ]);
    const notes: LibraryNotes = {
      library: textOf(library),
      stages: textOf(stages),
      templates: textOf(templates),
    };
    const kept = readKept(() => readLibraryNotes(notes, () => crypto.randomUUID()));
    const after = change(kept.library);
    if (after === kept.library && !kept.isMigrated) return kept;
    const value = JSON.stringify(after);
    const checked = check(value);
    await records.apply([
      { put: 'notes', key: names.library, value: JSON.stringify(checked), expects: library?.edition ?? null },
      ...(kept.isMigrated && stages !== null
        ? [{ remove: 'notes' as const, key: names.stages, expects: stages.edition }]
        : []),
    ]);
    return { ...kept, library: checked };
  };
  const attempt = async (change: (library: LibraryDocument) => LibraryDocument) => {
    for (let count = 1; ; count++) {
      try {
        return await changeOnce(change);
      } catch (error) {
        const isRetried = error instanceof StorageProblem && error.reason === 'changed';
        if (!isRetried || count === mostAttempts) throw error;
      }
    }
  };
  return {
    read: () => attempt((library) => library),
    change: async (change) => (await attempt(change)).library,
  };
}

/** What is known to be damaged is there, and can't be read. */
async function find(records: Records, name: string): Promise<KeptRecord | null> {
  try {
    return await records.find('notes', name);
  } catch (error) {
    if (error instanceof StorageProblem && error.reason === 'damaged') return { value: null, edition: '' };
    throw error;
  }
}

function textOf(kept: KeptRecord | null): string | null {
  if (kept === null) return null;
  return typeof kept.value === 'string' ? kept.value : '{'; // No JSON, so that it counts as damaged.
}

function readKept(read: () => ReadLibrary): ReadLibrary {
  try {
    return read();
  } catch (cause) {
    throw new StorageProblem(
      'damaged',
      'The library kept on this device can’t be read, and was left as it is. Update the program, or restore a backup of everything.',
      { cause },
    );
  }
}
