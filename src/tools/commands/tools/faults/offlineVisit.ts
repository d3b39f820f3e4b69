import type { BrowserContext, Page } from '@playwright/test';
import { openKeptSessions } from '../openKeptSessions';
import { longestMs } from './keptPages';

/** Waits until the page says that it opens without a network. */
async function keptForOffline(page: Page): Promise<void> {
  await page.getByText('opens without one').waitFor({ timeout: longestMs });
}

/** A first visit, after which the pages are kept for use without a network. */
export async function visitOnce(context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  await page.goto('./');
  await keptForOffline(page);
  return page;
}

/** Opens the page once more, from what is kept, as far as the empty list of sessions. */
export async function openOnceMore(page: Page): Promise<void> {
  await page.reload();
  await keptForOffline(page);
  await openKeptSessions(page);
  await page.getByText('Nothing is kept on this device yet').waitFor();
}
