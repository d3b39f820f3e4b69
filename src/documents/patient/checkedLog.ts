import type { LogEntry } from './logEntry';

/** Whether an entry is as its device signed it; 'unsigned': that device could not sign; 'unchecked': this one can't check. */
export type LogStanding = 'fits' | 'wrong' | 'unsigned' | 'unchecked';

/** The entries of who did what with their standing. */
export interface CheckedLog {
  /** In order of time. */
  entries: readonly { entry: LogEntry; standing: LogStanding; isOwn: boolean }[];
  /** How many entries are missing that another one follows, or that this device saw before. */
  missing: number;
}

export const emptyLog: CheckedLog = { entries: [], missing: 0 };
