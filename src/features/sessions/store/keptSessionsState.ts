import type { ListedSession } from '../rules/listedSession';
import type { ShownProblem } from '#shell/explainProblem';

/** Whether what is kept here outlasts the tab; the sentence says why not, and what to do. */
export type SessionsStorage =
  { state: 'opening' | 'lasting' } | { state: 'memory' | 'blocked'; sentence: string };

/** A record that can't be read; it stays where it is until it is deleted. */
export interface UnreadableRecord {
  id: string;
  kind: ListedSession['kind'];
  sentence: string;
}

/** A record that is deleted. */
export interface Removable {
  id: string;
  kind: ListedSession['kind'] | 'plan' | 'interrupted' | 'note';
}

/** Something that goes for good unless it is taken back within the next seconds. */
export interface Removal {
  /** Of the record, or of the patient: `patient` and the pseudonym. */
  id: string;
  /** Null where it is one record. */
  patient: string | null;
  records: readonly Removable[];
  /** When it goes, ms since 1970. */
  dueMs: number;
}

export interface KeptSessionsState {
  storage: SessionsStorage;
  /** Newest first, those about to go included; null until they are listed. */
  sessions: readonly ListedSession[] | null;
  unreadable: readonly UnreadableRecord[];
  /** Id of the visit that is looked at; null where none was chosen. */
  selected: string | null;
  /** Id of the session that is being opened just now. */
  opening: string | null;
  removals: readonly Removal[];
  /** What is used and free on this device, bytes; null until it was looked at, and where the browser does not tell. */
  space: { usedBytes: number; freeBytes: number } | null;
  /** How much the videos come to that would be deleted as old; null until it was looked at. */
  freeableBytes: number | null;
  /** How much the videos came to that were deleted last; null before. */
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
  freeableBytes: null,
  freedBytes: null,
  problem: null,
};
