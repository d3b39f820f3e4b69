import type { Page } from '@playwright/test';

/** Opens the kept sessions, from the start or from a newcomer's question; a page may show them already. */
export async function openKeptSessions(page: Page): Promise<void> {
  const treats = page.getByRole('button', { name: 'I treat people' });
  const open = page.getByRole('button', { name: 'Kept sessions', exact: true });
  const heading = page.getByRole('heading', { level: 1, name: 'Kept sessions' });
  await treats.or(open).or(heading).waitFor();
  if (await treats.isVisible()) await treats.click();
  await open.or(heading).waitFor();
  if (await open.isVisible()) await open.click();
  await heading.waitFor();
}
