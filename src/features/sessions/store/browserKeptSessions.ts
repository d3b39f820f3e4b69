import type { KeptSessionsAdapters } from './createKeptSessions';
import { removalNotes } from './removalNotes';

/** The browser as the kept sessions need it. */
export function browserKeptSessions(
  parts: Pick<KeptSessionsAdapters, 'openRepository' | 'review' | 'log' | 'sureness' | 'sessionsOf'>,
): KeptSessionsAdapters {
  return {
    ...parts,
    notes: removalNotes,
    nowMs: () => Date.now(),
    forgetRest() {
      for (const name of Object.keys(localStorage))
        if (name.startsWith('overfoot')) localStorage.removeItem(name);
      location.reload(); // This clears what the page still holds in memory.
    },
    later(ms, call) {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
  };
}
