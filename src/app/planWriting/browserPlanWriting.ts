import { saveFile } from '../saveFile';
import type { PlanWritingWorld } from './createPlanWriting';

const keyOf = (name: string) => `overfoot-${name}`;

/** The browser's own small storage for drafts; where it refuses, a draft lasts as long as the page. */
export function browserPlanWriting(): PlanWritingWorld {
  return {
    read(name) {
      try {
        return localStorage.getItem(keyOf(name));
      } catch {
        return null;
      }
    },
    write(name, text) {
      try {
        localStorage.setItem(keyOf(name), text);
      } catch {
        // The draft stays in the page; saving it as a file works all the same.
      }
    },
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
