import type { Page } from '@playwright/test';

/** The page on which plans are written, also for a newcomer who is asked first what they do. */
export async function openPlanWriting(page: Page): Promise<void> {
  await page.goto('./');
  const treats = page.getByRole('button', { name: 'I treat people' });
  const write = page.getByRole('button', { name: 'Write a plan' });
  await treats.or(write).waitFor();
  if (await treats.isVisible()) await treats.click();
  await write.click();
}
