import type { Adapters } from '../adapters';

const key = 'overfoot-reviewer';

/** Remembers who reviews on this device, where the browser lets it. */
export const browserReviewer: Adapters['reviewer'] = {
  read() {
    try {
      return localStorage.getItem(key) ?? '';
    } catch {
      return '';
    }
  },
  write(name) {
    try {
      localStorage.setItem(key, name);
    } catch {
      // It is asked for again the next time.
    }
  },
};
