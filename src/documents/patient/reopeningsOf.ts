import type { LogEntry } from './logEntry';

/** That somebody opened again what was settled in a session. */
export interface Reopening {
  /** Initials; empty where the device knew none. */
  by: string;
  at: string;
}

/**
 * What was opened again, by session; of several times the latest. It is said by the same kind of entry as that a review
 * is taken back, about a session instead of a recording, so that programs from before read it.
 */
export function reopeningsOf(log: readonly LogEntry[]): ReadonlyMap<string, Reopening> {
  const found = new Map<string, Reopening>();
  for (const { what, about, by, at } of log) {
    const before = found.get(about);
    if (what !== 'review-withdrawn' || (before !== undefined && Date.parse(before.at) >= Date.parse(at)))
      continue;
    found.set(about, { by, at });
  }
  return found;
}
