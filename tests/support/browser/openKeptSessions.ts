import { expect, type Page } from '@playwright/test';

/** Opens the kept sessions from the start; a page that was reloaded may show them already. */
export async function openKeptSessions(page: Page): Promise<void> {
  const open = page.getByRole('button', { name: 'Kept sessions', exact: true });
  const heading = page.getByRole('heading', { level: 1, name: 'Kept sessions' });
  await expect(open.or(heading)).toBeVisible();
  if (await open.isVisible()) await open.click();
  await expect(heading).toBeVisible();
}
