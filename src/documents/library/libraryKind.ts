import { readDraft } from '../plan/readDraft';
import { bySchema } from '../reading/bySchema';
import { fileWords, type DocumentKind } from '../reading/documentKind';
import { libraryKinds, librarySchema, libraryVersion, type LibraryDocument } from './libraryDocument';

/** How a practice's library is read. */
export const libraryKind: DocumentKind<LibraryDocument> = {
  problem: 'file',
  format: 'overfoot-library',
  version: libraryVersion,
  read: bySchema(librarySchema, libraryFault),
  words: fileWords(
    'practice’s library',
    'Choose a file that a colleague saved under “Library”.',
    'Ask your colleague to save it again.',
  ),
};

/** What the schema can't say; null where all is well. */
function libraryFault(library: LibraryDocument): string | null {
  const ids = libraryKinds.flatMap((kind) => library[kind].map(({ id }) => id));
  if (new Set(ids).size < ids.length) return 'it has the same entry twice';
  if (new Set(library.limits.map(({ task }) => task)).size < library.limits.length)
    return 'it has two limits of one task';
  const unreadable = library.templates.find(({ draft }) => readDraft(draft) === null);
  return unreadable === undefined ? null : `its template ${unreadable.name} can’t be shown`;
}
