import type { KeptSessionsAdapters } from './createKeptSessions';
import { removalNotes } from './removalNotes';

/** The browser as the inbox needs it. */
export function browserKeptSessions(
  parts: Pick<KeptSessionsAdapters, 'app' | 'openRepository' | 'forgetPatient'>,
): KeptSessionsAdapters {
  return {
    ...parts,
    notes: removalNotes,
    nowMs: () => Date.now(),
    forgetRest() {
      for (const name of Object.keys(localStorage))
        if (name.startsWith('overfoot')) localStorage.removeItem(name);
      location.reload(); // What the page itself still knows goes too.
    },
    later(ms, call) {
      const timer = setTimeout(call, ms);
      return () => clearTimeout(timer);
    },
  };
}
