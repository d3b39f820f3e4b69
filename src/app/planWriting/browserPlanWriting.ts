import type { Notes } from '../notes';
import { saveFile } from '../saveFile';
import type { PlanWritingWorld } from './createPlanWriting';

/** The browser as plan writing needs it; where it keeps no notes, a draft lasts as long as the page. */
export function browserPlanWriting(notes: Notes): PlanWritingWorld {
  return {
    read: (name) => notes.read(name),
    // The draft stays in the page where it can't be kept; saving it as a file works all the same.
    write: (name, text) => void notes.write(name, text).catch(() => undefined),
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
