import {
  libraryBounds,
  libraryKinds,
  type LibraryDocument,
  type LibraryEntry,
  type LibraryKind,
} from './libraryDocument';

/** One entry of a library from elsewhere, as it compares with what is here. */
export interface ComparedEntry {
  kind: LibraryKind;
  entry: LibraryEntry;
  /** 'newer' and 'older': changed later there, or not later, and so the one here stays. */
  standing: 'new' | 'newer' | 'older' | 'same';
}

/** Each entry of the library from there, in its order. */
export function compareLibraries(here: LibraryDocument, there: LibraryDocument): ComparedEntry[] {
  return libraryKinds.flatMap((kind) =>
    there[kind].map((entry) => ({ kind, entry, standing: standingOf(kind, entry, here) })),
  );
}

/**
 * Both libraries as one: of an entry that is in both, the one that was changed last.
 *
 * @returns  null where it would hold more than one can
 */
export function mergeLibraries(here: LibraryDocument, there: LibraryDocument): LibraryDocument | null {
  let merged = here;
  for (const { kind, entry, standing } of compareLibraries(here, there))
    if (standing === 'new' || standing === 'newer') merged = withEntry(merged, kind, entry);
  return libraryKinds.some((kind) => merged[kind].length > libraryBounds.entries) ? null : merged;
}

/** With an entry, in the place of the one that it is a version of. */
export function withEntry<Kind extends LibraryKind>(
  library: LibraryDocument,
  kind: Kind,
  entry: LibraryEntry<Kind>,
): LibraryDocument {
  const others = library[kind].filter((one) => keyOf(kind, one) !== keyOf(kind, entry));
  return { ...library, [kind]: [...others, entry] };
}

function standingOf(
  kind: LibraryKind,
  entry: LibraryEntry,
  here: LibraryDocument,
): ComparedEntry['standing'] {
  const kept = here[kind].find((one) => keyOf(kind, one) === keyOf(kind, entry));
  if (kept === undefined) return 'new';
  if (JSON.stringify(kept) === JSON.stringify(entry)) return 'same';
  return Date.parse(entry.at) > Date.parse(kept.at) ? 'newer' : 'older';
}

/** Limits are known by their task, all else by its id. */
function keyOf(kind: LibraryKind, entry: LibraryEntry): string {
  return kind === 'limits' ? (entry as LibraryEntry<'limits'>).task : entry.id;
}
