import { createQueue } from '#core/createQueue';
import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import { explainStorage, type StorageProblem } from '#device/storage/storageProblem';

/** Names of the small texts that are kept; damaged keys are set aside before others are written. */
export const noteNames = [
  'keys',
  'keys-damaged',
  'draft',
  'last-plan',
  'templates',
  'practice',
  'people',
  'reviewer',
  'sureness',
  'idle-lock',
  'role',
  'language',
] as const;
export type NoteName = (typeof noteNames)[number];

/** Small texts that outlast the tab: read at once, written in the background one after another. */
export interface Notes {
  /** Whether they outlast the tab. */
  readonly isLasting: boolean;
  read(name: NoteName): string | null;
  /** Its current text, which another tab may have written. */
  readAnew(name: NoteName): Promise<string | null>;
  /** @returns  resolves once it is kept; rejects with a StorageProblem where it can't be */
  write(name: NoteName, text: string): Promise<void>;
}

/** Where these texts were kept before they had a table: a page reads it once, and clears it. */
export type EarlierNotes = Pick<Storage, 'getItem' | 'removeItem'>;

/** Null where the browser refuses it: then nothing was ever kept there. */
export function earlierNotes(): EarlierNotes | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}

const earlierName = (name: NoteName) => `overfoot-${name}`;

/**
 * Reads the small texts of this device; texts in the earlier place are migrated. Where nothing can be opened,
 * they last as long as the page.
 */
export async function openNotes(
  openRepository: () => Promise<OpenedRepository>,
  earlier: EarlierNotes | null,
): Promise<Notes> {
  const notes = new Map<string, string>();
  const kept = await openRepository().then(
    ({ repository }) => (repository.lasting.records ? repository.notes : null),
    () => null,
  );
  for (const [name, text] of (await kept?.read().catch(() => null)) ?? []) notes.set(name, text);
  const writes = createQueue();
  const write = async (name: NoteName, text: string): Promise<void> => {
    notes.set(name, text);
    await writes.add(() => kept?.write(name, text)).catch(rethrow);
  };
  if (earlier !== null) await bringOver(earlier, notes, kept);

  return {
    isLasting: kept !== null,
    read: (name) => notes.get(name) ?? null,
    async readAnew(name) {
      await writes.idle();
      if (kept === null) return notes.get(name) ?? null;
      const text = (await kept.read().catch(rethrow)).get(name) ?? null;
      if (text === null) notes.delete(name);
      else notes.set(name, text);
      return text;
    },
    write,
  };
}

async function bringOver(
  earlier: EarlierNotes,
  notes: Map<string, string>,
  kept: Repository['notes'] | null,
): Promise<void> {
  for (const name of noteNames) {
    const text = earlier.getItem(earlierName(name));
    if (text === null) continue;
    try {
      // What is in the table already is newer.
      if (!notes.has(name)) await kept?.write(name, text);
      if (kept !== null) earlier.removeItem(earlierName(name));
    } catch {
      // It stays where it was, and is tried again the next time.
    }
    if (!notes.has(name)) notes.set(name, text);
  }
}

function rethrow(error: unknown): never {
  const problem: StorageProblem = explainStorage(error);
  throw problem;
}
