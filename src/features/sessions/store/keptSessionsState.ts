import type { ShownProblem } from '#shell/explainProblem';
import type { ListedSession } from '../rules/listedSession';

/** Whether what is kept here outlasts the tab; the sentence says why not, and what to do. */
export type SessionsStorage =
  { state: 'opening' | 'lasting' } | { state: 'memory' | 'no-videos' | 'blocked'; sentence: string };

/** A record that can't be read; it stays where it is until it is deleted. */
export interface UnreadableRecord {
  id: string;
  kind: ListedSession['kind'];
  sentence: string;
}

/** A record that is deleted. */
export interface Removable {
  id: string;
  kind: ListedSession['kind'] | 'patient' | 'plan' | 'interrupted' | 'note';
}

/** Something that will be deleted for good unless that is undone within seconds. */
export interface Removal {
  /** Of the record, or of the patients: `patient` and their pseudonyms. */
  id: string;
  /** Whose records all go; none where it is one record. */
  patients: readonly string[];
  /** What they are called together; null for one patient or record. */
  name: string | null;
  records: readonly Removable[];
  /** When it is deleted, ms since 1970. */
  dueMs: number;
}

export interface KeptSessionsState {
  storage: SessionsStorage;
  /** Newest first, those about to be deleted included; null until they are listed. */
  sessions: readonly ListedSession[] | null;
  unreadable: readonly UnreadableRecord[];
  /** Id of the session that is viewed; null where none was chosen. */
  selected: string | null;
  /** Id of the recording that is being opened. */
  opening: string | null;
  removals: readonly Removal[];
  /**
   * What is used and free on this device, bytes; null until it was read, and where the browser does not
   * report it.
   */
  space: { usedBytes: number; freeBytes: number } | null;
  /** Whether the browser agreed never to clear what is kept by itself; null until it was asked. */
  isSafe: boolean | null;
  /** Total size of the videos that would be deleted as old, bytes; null until it was read. */
  freeableBytes: number | null;
  /** Total size of the videos that were deleted last, bytes; null before. */
  freedBytes: number | null;
  problem: ShownProblem | null;
}

export const initialKeptSessionsState: KeptSessionsState = {
  storage: { state: 'opening' },
  sessions: null,
  unreadable: [],
  selected: null,
  opening: null,
  removals: [],
  space: null,
  isSafe: null,
  freeableBytes: null,
  freedBytes: null,
  problem: null,
};
