import type { Page } from '@playwright/test';

/** A file as it would be chosen. */
export interface ChosenFile {
  name: string;
  mimeType: string;
  bytes: Buffer;
}

/**
 * Puts a file into a page's only field for files, as if somebody had chosen it. The runner's own way keeps hold of the
 * field, and with it of the whole screen, for as long as the page lives.
 */
export async function giveFile(page: Page, { name, mimeType, bytes }: ChosenFile): Promise<void> {
  const field = 'input[type=file]';
  await page.waitForSelector(field, { state: 'attached' }).then((handle) => handle.dispose());
  await page.evaluate(
    ({ field, name, type, base64 }) => {
      const input = document.querySelector<HTMLInputElement>(field)!;
      const chosen = new DataTransfer();
      chosen.items.add(new File([Uint8Array.from(atob(base64), (one) => one.charCodeAt(0))], name, { type }));
      input.files = chosen.files;
      input.dispatchEvent(new Event('change', { bubbles: true }));
    },
    { field, name, type: mimeType, base64: bytes.toString('base64') },
  );
}
