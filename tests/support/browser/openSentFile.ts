import type { Page } from '@playwright/test';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { openAnew } from './openAnew';

/** The therapist opens the program, and in it a file that a patient has sent. */
export async function openSentFile(
  page: Page,
  { name, buffer }: { name: string; buffer: Buffer },
): Promise<void> {
  await openAnew(page);
  await openKeptSessions(page);
  await page
    .locator('input[type=file]')
    .setInputFiles({ name, mimeType: 'application/octet-stream', buffer });
}
