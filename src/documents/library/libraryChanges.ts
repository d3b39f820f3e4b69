import { Problem } from '#core/problem';
import { canonicalText } from '../reading/canonicalText';
import {
  emptyLibrary,
  keyOf,
  libraryBounds,
  libraryKinds,
  type LibraryDocument,
  type LibraryEntry,
  type LibraryKind,
} from './libraryDocument';

/** The last that happened to an entry: it was changed, or it was removed. */
export interface LibraryChange {
  kind: LibraryKind;
  key: string;
  at: string;
  /** Null where it was removed. */
  entry: LibraryEntry | null;
}

/** More than a library can hold; nothing was changed. */
export class LibraryFull extends Problem {
  constructor() {
    super(
      'file',
      `The library holds ${libraryBounds.entries} entries of a kind at most, and ${libraryBounds.characters} characters in all. Take some out first.`,
    );
    this.name = 'LibraryFull';
  }
}

/** The last that happened to each entry, by kind and key. */
export function changesOf(library: LibraryDocument): Map<string, LibraryChange> {
  const entries = libraryKinds.flatMap((kind) =>
    library[kind].map((entry) => ({ kind, key: keyOf(entry), at: entry.at, entry })),
  );
  const removed = library.removed.map((one) => ({ ...one, entry: null }));
  return new Map([...entries, ...removed].map((change) => [nameOf(change), change]));
}

/**
 * The one of two that counts: the later one. Of one time, an entry counts before its removal, and of two entries always
 * the same one, whichever comes first.
 */
export function laterOf(one: LibraryChange, other: LibraryChange): LibraryChange {
  const [first, second] = [one, other].map(({ at }) => Date.parse(at));
  if (first !== second) return first! > second! ? one : other;
  if (one.entry === null || other.entry === null) return one.entry === null ? other : one;
  return canonicalText(one.entry) >= canonicalText(other.entry) ? one : other;
}

/**
 * With an entry, in the place of the one that it is a version of.
 *
 * @param entry  its `at` is moved behind what is there, since clocks differ between devices
 * @throws LibraryFull
 */
export function withEntry<Kind extends LibraryKind>(
  library: LibraryDocument,
  kind: Kind,
  entry: LibraryEntry<Kind>,
): LibraryDocument {
  return fitting(changed(library, [{ kind, key: keyOf(entry), at: entry.at, entry }]));
}

/**
 * Without an entry; that it was removed is remembered. The same library where there is none.
 *
 * @param at  moved behind what is there
 */
export function withoutEntry(
  library: LibraryDocument,
  kind: LibraryKind,
  key: string,
  at: string,
): LibraryDocument {
  const isThere = library[kind].some((entry) => keyOf(entry) === key);
  return isThere ? changed(library, [{ kind, key, at, entry: null }]) : library;
}

/**
 * With what one change did undone, as a change of its own; what was changed again since, by whomever, stays. The same
 * library where that is all of it.
 */
export function undone(
  library: LibraryDocument,
  { before, after }: { before: LibraryDocument; after: LibraryDocument },
  at: string,
): LibraryDocument {
  const [now, was, became] = [changesOf(library), changesOf(before), changesOf(after)];
  const back = [...became].flatMap(([name, change]): LibraryChange[] => {
    const { kind, key } = change;
    const entry = was.get(name)?.entry ?? null;
    const isAsLeft = contentOf(now.get(name)) === contentOf(change);
    return isAsLeft && contentOf(was.get(name)) !== contentOf(change) ? [{ kind, key, at, entry }] : [];
  });
  return back.length === 0 ? library : fitting(changed(library, back));
}

/**
 * Both libraries as one: of what happened to an entry in both, the last counts. It is the same whichever is first, and
 * however many become one in whatever order.
 *
 * @throws LibraryFull
 */
export function mergeLibraries(here: LibraryDocument, there: LibraryDocument): LibraryDocument {
  const merged = changesOf(here);
  for (const [name, change] of changesOf(there)) {
    const kept = merged.get(name);
    merged.set(name, kept === undefined ? change : laterOf(kept, change));
  }
  return fitting(libraryOf(merged));
}

function changed(library: LibraryDocument, changes: readonly LibraryChange[]): LibraryDocument {
  const all = changesOf(library);
  for (const change of changes) {
    const name = nameOf(change);
    const at = behind(change.at, all.get(name)?.at);
    all.set(name, { ...change, at, entry: change.entry && { ...change.entry, at } });
  }
  return libraryOf(all);
}

/** The latest moment that a document can name, ms since 1970. */
const lastMs = Date.parse('9999-12-31T23:59:59.999Z');

/** A moment, or the one right after another where that is later. */
function behind(at: string, other: string | undefined): string {
  if (other === undefined || Date.parse(at) > Date.parse(other)) return at;
  return new Date(Math.min(lastMs, Date.parse(other) + 1)).toISOString();
}

/** The library in which this happened last, in the order in which it did. */
function libraryOf(changes: ReadonlyMap<string, LibraryChange>): LibraryDocument {
  const inOrder = [...changes.values()].sort(byTime);
  const entries = libraryKinds.map((kind) => [
    kind,
    inOrder.flatMap((change) => (change.kind === kind && change.entry !== null ? [change.entry] : [])),
  ]);
  const removed = inOrder.flatMap(({ kind, key, at, entry }) => (entry === null ? [{ kind, key, at }] : []));
  return {
    ...emptyLibrary,
    ...(Object.fromEntries(entries) as Pick<LibraryDocument, LibraryKind>),
    removed: removed.slice(-libraryBounds.removed),
  };
}

/** @throws LibraryFull */
function fitting(library: LibraryDocument): LibraryDocument {
  const isFull =
    libraryKinds.some((kind) => library[kind].length > libraryBounds.entries) ||
    JSON.stringify(library).length > libraryBounds.characters;
  if (isFull) throw new LibraryFull();
  return library;
}

function byTime(one: LibraryChange, other: LibraryChange): number {
  return Date.parse(one.at) - Date.parse(other.at) || (nameOf(one) < nameOf(other) ? -1 : 1);
}

function nameOf({ kind, key }: LibraryChange): string {
  return `${kind} ${key}`;
}

/** What an entry says, without when it was said and by whom; empty where there is none. */
export function contentOf(change: LibraryChange | undefined): string {
  if (change === undefined || change.entry === null) return '';
  const { at, by, ...content } = change.entry;
  return canonicalText(content);
}
