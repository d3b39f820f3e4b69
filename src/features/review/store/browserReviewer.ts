import type { Notes } from '#shell/notes';
import type { ReviewAdapters } from './reviewAdapters';

/** Remembers who reviews on this device, where the browser allows it. */
export function browserReviewer(notes: Notes): ReviewAdapters['reviewer'] {
  return {
    read: () => notes.read('reviewer') ?? '',
    write: (name) => void notes.write('reviewer', name).catch(() => undefined), // Otherwise asked for again.
  };
}
