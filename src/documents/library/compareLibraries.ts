import { changesOf, contentOf, laterOf } from './libraryChanges';
import type { LibraryDocument, LibraryEntry, LibraryKind } from './libraryDocument';

/** One entry of a library from elsewhere, as it compares with what is here. */
export interface ComparedEntry {
  kind: LibraryKind;
  entry: LibraryEntry;
  /**
   * 'same': it says the same, whenever that was written. 'newer' and 'older': changed later there, or not later, and so
   * the one here stays. 'out-here': taken out here later, and stays out; 'out-there': taken out there later, and so here
   * as well.
   */
  standing: 'new' | 'newer' | 'older' | 'same' | 'out-here' | 'out-there';
}

/** Each entry of the library from there, in its order, and what of those here was removed there. */
export function compareLibraries(here: LibraryDocument, there: LibraryDocument): ComparedEntry[] {
  const known = changesOf(here);
  return [...changesOf(there)].flatMap(([name, change]): ComparedEntry[] => {
    const { kind, entry } = change;
    const kept = known.get(name);
    const isLater = kept === undefined || laterOf(kept, change) === change;
    if (entry === null) {
      const gone = kept?.entry ?? null;
      return gone !== null && isLater ? [{ kind, entry: gone, standing: 'out-there' }] : [];
    }
    if (kept === undefined) return [{ kind, entry, standing: 'new' }];
    if (kept.entry === null) return [{ kind, entry, standing: isLater ? 'newer' : 'out-here' }];
    if (contentOf(kept) === contentOf(change)) return [{ kind, entry, standing: 'same' }];
    return [{ kind, entry, standing: isLater ? 'newer' : 'older' }];
  });
}
