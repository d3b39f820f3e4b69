import type { Page } from '@playwright/test';

/** Opens the start; where sessions are kept, the page opens on those. */
export async function openStart(page: Page): Promise<void> {
  await page.goto('./');
  const back = page.getByRole('button', { name: 'Back to the start' });
  await back
    .or(page.getByRole('button', { name: 'Write a plan' }))
    .first()
    .waitFor();
  if (await back.isVisible()) await back.click();
}
