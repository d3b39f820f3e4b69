import { readDraft } from '../plan/readDraft';
import { parseDocument } from '../reading/readDocument';
import { emptyLibrary, libraryBounds, type LibraryDocument, type LibraryEntry } from './libraryDocument';
import { libraryKind } from './libraryKind';
import { readEarlierStages } from './stages';

/** The small texts of a device that hold the library, and what belonged to it before; null for none. */
export interface LibraryNotes {
  library: string | null;
  /** Stages, from before version 2. */
  stages: string | null;
  /** Templates, from before there was a library. */
  templates: string | null;
}

/** The library of a device. */
export interface ReadLibrary {
  library: LibraryDocument;
  /** Whether something was taken over that has to be kept with it from now on. */
  isMigrated: boolean;
  /** Whether there are earlier stages that can't be read: they are left where they are. */
  hasUnreadableStages: boolean;
}

/** When something was last changed of which that was not noted: whatever was changed since then counts before it. */
const unknownTime = '1970-01-01T00:00:00.000Z';

/**
 * Reads the library of a device. Earlier stages are taken over for exercises of which it says nothing, earlier
 * templates where there is no library yet.
 *
 * @throws Problem  where the library can't be read: nothing may then be written over it
 */
export function readLibraryNotes(notes: LibraryNotes, newId: () => string): ReadLibrary {
  const isThere = notes.library !== null && notes.library !== '';
  const kept = isThere
    ? parseDocument(notes.library!, libraryKind)
    : { ...emptyLibrary, templates: earlierTemplates(notes.templates, newId) };
  const earlier = notes.stages === null || notes.stages === '' ? [] : readEarlierStages(notes.stages);
  const known = new Set([
    ...kept.stages.map(({ exercise }) => exercise),
    ...kept.removed.filter(({ kind }) => kind === 'stages').map(({ key }) => key),
  ]);
  const added = (earlier ?? [])
    .filter(({ exercise }) => !known.has(exercise))
    .map((own) => ({ ...own, at: unknownTime, by: '' }));
  return {
    library: added.length === 0 ? kept : { ...kept, stages: [...added, ...kept.stages] },
    isMigrated: (earlier ?? []).length > 0 || (!isThere && kept.templates.length > 0),
    hasUnreadableStages: earlier === null,
  };
}

/** Those that can't be read are left out. */
function earlierTemplates(text: string | null, newId: () => string): LibraryEntry<'templates'>[] {
  const data = parsed(text);
  if (!Array.isArray(data)) return [];
  return data.slice(0, libraryBounds.entries).flatMap((one: unknown) => {
    const { name, draft: kept } = (one ?? {}) as { name?: unknown; draft?: unknown };
    const draft = typeof name === 'string' && name !== '' ? readDraft(kept) : null;
    if (draft === null) return [];
    const entry = { id: newId(), at: unknownTime, by: '' };
    return [{ ...entry, name: (name as string).slice(0, libraryBounds.name), draft: { ...draft } }];
  });
}

function parsed(text: string | null): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
}
