import type { Page } from '@playwright/test';

/** Runs in a page before the program does: its database is full whenever `setFull` says so. */
export function mayBeFull(): void {
  const { put } = IDBObjectStore.prototype;
  Object.assign(window, { isFull: false });
  IDBObjectStore.prototype.put = function (...asked: Parameters<typeof put>) {
    if ((window as unknown as { isFull: boolean }).isFull)
      throw new DOMException('no room', 'QuotaExceededError');
    return put.apply(this, asked);
  };
}

export function setFull(page: Page, isFull: boolean): Promise<void> {
  return page.evaluate((full) => void Object.assign(window, { isFull: full }), isFull);
}
