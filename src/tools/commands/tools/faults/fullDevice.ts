import type { Page } from '@playwright/test';

/** Runs in a page before the program does: its database is full whenever `setFull` says so. */
export function mayBeFull(): void {
  const { put } = IDBObjectStore.prototype;
  Object.assign(window, { putsLeft: Infinity });
  IDBObjectStore.prototype.put = function (...asked: Parameters<typeof put>) {
    const state = window as unknown as { putsLeft: number };
    if (state.putsLeft-- <= 0) throw new DOMException('no room', 'QuotaExceededError');
    return put.apply(this, asked);
  };
}

/** @param after  so many records still fit in */
export function setFull(page: Page, isFull: boolean, after = 0): Promise<void> {
  const putsLeft = isFull ? after : 1e9;
  return page.evaluate((left) => void Object.assign(window, { putsLeft: left }), putsLeft);
}
