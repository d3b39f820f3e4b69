import type { Page } from '@playwright/test';

/** Opens an address as if for the first time: the same address again would be a reload, which stays on its screen. */
export async function openAnew(page: Page, address = './'): Promise<void> {
  await page.goto('about:blank');
  await page.goto(address);
}
