import { createStore, type StoreApi } from 'zustand/vanilla';
import { createQueue } from '#core/createQueue';
import type { ExerciseId } from '#core/exercises/exercises';
import { Problem } from '#core/problem';
import type { KeptLibrary } from '#device/storage/keptLibrary';
import { compareLibraries, type ComparedEntry } from '#documents/library/compareLibraries';
import { mergeLibraries, undone, withEntry, withoutEntry } from '#documents/library/libraryChanges';
import {
  emptyLibrary,
  keyOf,
  type LibraryDocument,
  type LibraryEntry,
  type LibraryKind,
} from '#documents/library/libraryDocument';
import {
  practiceStages,
  stagesFor,
  type AnyStage,
  type OwnStages,
  type PracticeStages,
} from '#documents/library/stages';
import type { DeviceSigner } from '#shell/deviceSigner';
import { explainProblem, type Doing } from '#shell/explainProblem';
import { libraryFileOf, readLibraryFile } from './libraryFile';

export interface LibraryState {
  library: LibraryDocument;
  /** The stages that are in it. */
  stages: PracticeStages;
  /** Whether the last change can be undone; changes of stages are undone by themselves. */
  canUndo: boolean;
  canUndoStages: boolean;
  /** A colleague's library that was read: the user has to say whether it is taken in. */
  found: { entries: readonly ComparedEntry[]; signer: string } | null;
  /** The public key that signed the file that was saved last; null before. */
  savedBy: string | null;
  sentence: string | null;
}

/** What the library needs from the world around it; tests hand in plain objects. */
export interface LibraryWorld extends KeptLibrary {
  /** Hears of every change of what is kept, made here, in another tab or by a colleague. */
  watch(listener: () => void): void;
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
  keep<Kind extends Exclude<LibraryKind, 'stages'>>(kind: Kind, content: LibraryContent<Kind>): Promise<void>;
  /** @param key  by which the entry is known */
  remove(kind: LibraryKind, key: string): Promise<void>;
  /** Undoes the last change: what was kept, removed or taken in. */
  undo(): Promise<void>;
  /**
   * Changes the practice's stages of an exercise.
   *
   * @param change  given the stages as they are by then; null: the program's own
   */
  changeStages(
    exercise: ExerciseId,
    change: ((stages: readonly AnyStage[]) => readonly AnyStage[]) | null,
  ): Promise<void>;
  /** Undoes the last change of stages, of whatever exercise, since the page was opened. */
  undoStages(): Promise<void>;
  /** Saves all of it as a file, signed by this device. */
  save(): Promise<void>;
  /** Reads and compares a colleague's file; nothing is kept yet. */
  open(file: Blob): Promise<void>;
  /** Takes in what was opened: of each entry, what happened last. */
  take(): Promise<void>;
  /** Takes in one entry of what was opened, even where the one here was changed or taken out later. */
  takeOne(kind: LibraryKind, key: string): Promise<void>;
  dismiss(): void;
}

/** One change, which can be undone. */
interface Done {
  before: LibraryDocument;
  after: LibraryDocument;
}

/** Changes of stages that can be undone. */
const longestHistory = 200;

export async function createLibrary(world: LibraryWorld): Promise<Library> {
  const store = createStore<LibraryState>(() => ({
    library: emptyLibrary,
    stages: {},
    canUndo: false,
    canUndoStages: false,
    found: null,
    savedBy: null,
    sentence: null,
  }));
  const { getState: get, setState: set } = store;
  const queue = createQueue();
  let last: Done | null = null;
  let doneToStages: readonly Done[] = [];
  let opened: { library: LibraryDocument; signer: string } | null = null;

  const show = (library = get().library) =>
    set({
      library,
      stages: practiceStages(library.stages),
      canUndo: last !== null,
      canUndoStages: doneToStages.length > 0,
      found: opened && { entries: compareLibraries(library, opened.library), signer: opened.signer },
    });
  const attempt = (doing: Doing, work: () => Promise<void>) =>
    queue.add(async () => {
      set({ sentence: null });
      try {
        await work();
      } catch (error) {
        set({ sentence: explainProblem(error, doing).sentence });
      }
      show();
    });
  const read = async () => {
    try {
      const { library, hasUnreadableStages } = await world.read();
      show(library);
      if (hasUnreadableStages) set({ sentence: unreadableStages });
    } catch (error) {
      set({ sentence: explainProblem(error, 'open').sentence });
    }
  };
  /** @returns what was done; null where nothing was to be done */
  const put = async (change: (library: LibraryDocument) => LibraryDocument): Promise<Done | null> => {
    let before = get().library;
    const after = await world.change((kept) => change((before = kept)));
    set({ library: after });
    return after === before ? null : { before, after };
  };
  const signed = async () => ({ at: world.now().toISOString(), by: await world.initials() });
  const undo = async (done: Done, forget: () => void) => {
    const at = world.now().toISOString();
    const isDone = (await put((kept) => undone(kept, done, at))) !== null;
    forget();
    if (!isDone) throw new Problem('file', changedSince);
  };

  await read();
  world.watch(() => void queue.add(read));

  return {
    store,
    keep: (kind, content) =>
      attempt('keep', async () => {
        const by = await signed();
        last = await put((kept) => {
          const id = kept[kind].find((one) => nameOf(one) === nameOf(content))?.id ?? world.newId();
          return withEntry(kept, kind, { ...content, id, ...by } as LibraryEntry<typeof kind>);
        });
      }),
    remove: (kind, key) =>
      attempt('keep', async () => {
        const at = world.now().toISOString();
        last = await put((kept) => withoutEntry(kept, kind, key, at));
      }),
    undo: () =>
      attempt('keep', async () => {
        if (last !== null) await undo(last, () => (last = null));
      }),
    changeStages: (exercise, change) =>
      attempt('keep', async () => {
        const by = await signed();
        const done = await put((kept) => {
          if (change === null) return withoutEntry(kept, 'stages', exercise, by.at);
          const stages = change(stagesFor(exercise, practiceStages(kept.stages)));
          return withEntry(kept, 'stages', { exercise, ...by, stages: [...stages] as OwnStages['stages'] });
        });
        if (done !== null) doneToStages = [...doneToStages, done].slice(-longestHistory);
      }),
    undoStages: () =>
      attempt('keep', async () => {
        const done = doneToStages.at(-1);
        if (done !== undefined) await undo(done, () => (doneToStages = doneToStages.slice(0, -1)));
      }),
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
        opened = await readLibraryFile(file);
      }),
    take: () =>
      attempt('keep', async () => {
        if (opened === null) return;
        const { library } = opened;
        last = await put((kept) => mergeLibraries(kept, library));
        opened = null;
      }),
    takeOne: (kind, key) =>
      attempt('keep', async () => {
        const entry = opened?.library[kind].find((one) => keyOf(one) === key);
        if (entry !== undefined) last = await put((kept) => withEntry(kept, kind, entry));
      }),
    dismiss() {
      opened = null;
      show();
      set({ sentence: null });
    },
  };
}

/** By what people know an entry: its name, or its task. */
export function nameOf(entry: { name: string } | { task: string }): string {
  return 'name' in entry ? entry.name : entry.task;
}

const unreadableStages =
  'The stages that were kept here before the library held them can’t be read, and were left as they are. Enter them again where they are missed.';
const changedSince = 'It was changed again since then, here or by a colleague, and stays as it is.';
