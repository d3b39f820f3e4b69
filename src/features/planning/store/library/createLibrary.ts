import { createStore, type StoreApi } from 'zustand/vanilla';
import { Problem } from '#core/problem';
import {
  compareLibraries,
  mergeLibraries,
  withEntry,
  type ComparedEntry,
} from '#documents/library/compareLibraries';
import {
  emptyLibrary,
  libraryBounds,
  type LibraryDocument,
  type LibraryEntry,
  type LibraryKind,
} from '#documents/library/libraryDocument';
import { libraryKind } from '#documents/library/libraryKind';
import { readDraft } from '#documents/plan/readDraft';
import { parseDocument } from '#documents/reading/readDocument';
import type { DeviceSigner } from '#shell/deviceSigner';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { readJson } from '../practice';
import { libraryFileOf, readLibraryFile } from './libraryFile';

export interface LibraryState {
  library: LibraryDocument;
  /** Whether the last change can be undone. */
  canUndo: boolean;
  /** A colleague's library that was read: the user has to say whether it is taken in. */
  found: { entries: readonly ComparedEntry[]; signer: string } | null;
  /** The public key that signed the file that was saved last; null before. */
  savedBy: string | null;
  sentence: string | null;
}

/** What the library needs from the world around it; tests hand in plain objects. */
export interface LibraryWorld {
  /** The library as it is kept, and the templates from before there was one; null where there is none. */
  read(name: 'library' | 'templates'): string | null;
  /** Rejects where it can't be kept. */
  write(text: string): Promise<void>;
  initials(): Promise<string>;
  /** Null where this device can't sign. */
  signer(): Promise<DeviceSigner | null>;
  saveFile(fileName: string, text: string): void;
  newId(): string;
  now(): Date;
}

/** What an entry says, without when and by whom. */
export type LibraryContent<Kind extends LibraryKind> = {
  [One in LibraryKind]: Omit<LibraryEntry<One>, 'id' | 'at' | 'by'>;
}[Kind];

/** The practice's own library. No action throws or rejects: what goes wrong is in the state. */
export interface Library {
  readonly store: StoreApi<LibraryState>;
  /** Adds an entry, or changes the one of the same name or task. */
  keep<Kind extends LibraryKind>(kind: Kind, content: LibraryContent<Kind>): Promise<void>;
  remove(kind: LibraryKind, id: string): Promise<void>;
  /** Undoes the last change: what was kept, removed or taken in. */
  undo(): Promise<void>;
  /** Saves all of it as a file, signed by this device. */
  save(): Promise<void>;
  /** Reads and compares a colleague's file; nothing is kept yet. */
  open(file: Blob): Promise<void>;
  /** Takes in what was opened. */
  take(): Promise<void>;
  dismiss(): void;
}

export function createLibrary(world: LibraryWorld): Library {
  const first = readKept(world);
  const store = createStore<LibraryState>(() => ({
    library: first ?? emptyLibrary,
    canUndo: false,
    found: null,
    savedBy: null,
    sentence: first === null ? unreadable : null,
  }));
  const { getState: get, setState: set } = store;
  let before: LibraryDocument | null = null;
  let opened: LibraryDocument | null = null;

  const attempt = async (doing: Doing, work: () => Promise<void>) => {
    set({ sentence: null });
    try {
      await work();
    } catch (error) {
      set({ sentence: explainProblem(error, doing).sentence });
    }
  };
  const put = async (changed: LibraryDocument, isUndo = false) => {
    if (first === null) throw new Problem('storage', unreadable);
    // As it will be read: in the same order, so that it compares with what comes back in a file.
    const library = parseDocument(JSON.stringify(changed), libraryKind);
    await world.write(JSON.stringify(library));
    before = isUndo ? null : get().library;
    set({ library, canUndo: !isUndo });
  };

  return {
    store,
    keep: (kind, content) =>
      attempt('keep', async () => {
        const { library } = get();
        const id = library[kind].find((one) => nameOf(one) === nameOf(content))?.id ?? world.newId();
        const signed = { id, at: world.now().toISOString(), by: await world.initials() };
        const next = withEntry(library, kind, { ...content, ...signed } as LibraryEntry<typeof kind>);
        if (next[kind].length > libraryBounds.entries) throw new Problem('file', full);
        await put(next);
      }),
    remove: (kind, id) =>
      attempt('keep', () => {
        const { library } = get();
        return put({ ...library, [kind]: library[kind].filter((one) => one.id !== id) });
      }),
    undo: () => attempt('keep', async () => (before === null ? undefined : put(before, true))),
    save: () =>
      attempt('save', async () => {
        const signer = await world.signer();
        if (signer === null)
          throw new Problem(
            'file',
            'This browser can’t sign here. Open the program over https, in a normal window.',
          );
        const day = world.now().toISOString().slice(0, 10);
        world.saveFile(`overfoot-library-${day}.jsonl`, await libraryFileOf(get().library, signer));
        set({ savedBy: signer.key });
      }),
    open: (file) =>
      attempt('open', async () => {
        opened = null;
        set({ found: null });
        const { library, signer } = await readLibraryFile(file);
        opened = library;
        set({ found: { entries: compareLibraries(get().library, library), signer } });
      }),
    take: () =>
      attempt('keep', async () => {
        if (opened === null) return;
        const merged = mergeLibraries(get().library, opened);
        if (merged === null) throw new Problem('file', full);
        await put(merged);
        opened = null;
        set({ found: null });
      }),
    dismiss() {
      opened = null;
      set({ found: null, sentence: null });
    },
  };
}

/** By what people know an entry: its name, or its task. */
export function nameOf(entry: { name: string } | { task: string }): string {
  return 'name' in entry ? entry.name : entry.task;
}

const full = `The library holds ${libraryBounds.entries} entries of a kind. Take one out first.`;
const unreadable =
  'The library kept on this device can’t be read, and was left as it is. Restore a backup of everything.';

/** Null where it can't be read: nothing may then be written over it. */
function readKept(world: LibraryWorld): LibraryDocument | null {
  const text = world.read('library');
  try {
    if (text !== null && text !== '') return parseDocument(text, libraryKind);
  } catch {
    return null;
  }
  return { ...emptyLibrary, templates: earlierTemplates(world) };
}

/** Templates from before there was a library; those that can't be read are left out. */
function earlierTemplates({ read, newId, now }: LibraryWorld): LibraryEntry<'templates'>[] {
  const data = readJson(read('templates'));
  if (!Array.isArray(data)) return [];
  return data.slice(0, libraryBounds.entries).flatMap((one: unknown) => {
    const { name, draft: kept } = (one ?? {}) as { name?: unknown; draft?: unknown };
    const draft = typeof name === 'string' && name !== '' ? readDraft(kept) : null;
    if (draft === null) return [];
    const entry = { id: newId(), at: now().toISOString(), by: '' };
    return [{ ...entry, name: (name as string).slice(0, libraryBounds.name), draft: { ...draft } }];
  });
}
