import { z } from '#documents/schema/zod';
import type { RemovalNotes } from './removals';

const key = 'overfoot-removals';
const notesSchema = z.array(
  z.strictObject({
    id: z.string(),
    kind: z.enum(['visit', 'recording', 'patient', 'plan', 'interrupted', 'note']),
    dueMs: z.number(),
  }),
);

/**
 * Notes in the browser's small storage, which is written at once; where it is refused, they are lost when the
 * tab closes.
 */
export const removalNotes: RemovalNotes = {
  read() {
    try {
      return notesSchema.parse(JSON.parse(localStorage.getItem(key) ?? '[]'));
    } catch {
      return [];
    }
  },
  write(removals) {
    try {
      if (removals.length === 0) localStorage.removeItem(key);
      else localStorage.setItem(key, JSON.stringify(removals));
    } catch {
      // Refused: deleting still happens while the tab is open.
    }
  },
};
