import type { Records } from './records';
import type { Videos } from './videos';

/** What is kept, in both kinds of storage. */
export interface Kept {
  records: Records;
  videos: Videos;
}

/** The browser's own facts about one shelf; undefined where it gives none. */
export type ShelfStorage = Pick<StorageManager, 'estimate' | 'persist'> | undefined;

/**
 * The places in which things can be kept on this device, by number. One of them is in use. Where the lock
 * changes, everything is copied to a new shelf, and the old one is removed as a whole: what was overwritten
 * or deleted in a database stays readable on the disk, but nothing of a removed shelf does, where `leavesNothing`.
 */
export interface Shelves {
  /** Whether a removed shelf can't be read from the disk any more. */
  readonly leavesNothing: boolean;
  /** Those that exist, lowest first; 0 is the one of earlier versions of this program. */
  list(): Promise<number[]>;
  /** Opens a shelf's records; a shelf that does not exist is made. */
  openRecords(shelf: number): Promise<Records>;
  openVideos(shelf: number): Promise<Videos>;
  storageOf(shelf: number): Promise<ShelfStorage>;
  /** Removes a shelf with everything on it; what is open on it must be closed first. */
  remove(shelf: number): Promise<void>;
  /** Deletes what is kept beside the shelves: the keys with which sent sessions are signed, and what is shared. */
  forgetRest(): Promise<void>;
}
