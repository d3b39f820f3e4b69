import { readDraft } from '../plan/readDraft';
import { bySchema } from '../reading/bySchema';
import { fileWords, type DocumentKind } from '../reading/documentKind';
import {
  keyOf,
  libraryKinds,
  librarySchema,
  libraryVersion,
  type LibraryDocument,
  type LibraryKind,
} from './libraryDocument';
import { stagesFault } from './stages';

/** How a practice's library is read. */
export const libraryKind: DocumentKind<LibraryDocument> = {
  problem: 'file',
  format: 'overfoot-library',
  version: libraryVersion,
  bringUp: (older, version) =>
    version === 1 ? { ...older, version: libraryVersion, stages: [], removed: [] } : older,
  read: bySchema(librarySchema, libraryFault),
  words: fileWords(
    'practice’s library',
    'Choose a file that a colleague saved under “Library”.',
    'Ask your colleague to save it again.',
  ),
};

/** What the schema can't say; null where all is well. */
function libraryFault(library: LibraryDocument): string | null {
  for (const kind of libraryKinds) {
    const gone = library.removed.filter((one) => one.kind === kind).map(({ key }) => key);
    const keys = [...library[kind].map(keyOf), ...gone];
    if (new Set(keys).size < keys.length) return twice[kind] ?? 'it has the same entry twice';
  }
  const unreadable = library.templates.find(({ draft }) => readDraft(draft) === null);
  if (unreadable !== undefined) return `its template ${unreadable.name} can’t be shown`;
  return library.stages.map(stagesFault).find((fault) => fault !== null) ?? null;
}

const twice: Partial<Record<LibraryKind, string>> = {
  limits: 'it has two limits of one task',
  stages: 'it has two sets of stages of one exercise',
};
