import type { Page } from '@playwright/test';
import { openKeptSessions } from '../openKeptSessions';
import type { FaultDevice } from './faultDevice';

export const passphrase = 'otter river stone lamp';
/** Keys are derived from passphrases slowly by design, ms. */
export const longestMs = 90_000;

export const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

/** Opens the newest kept session, with its sets. */
export async function openKept(device: FaultDevice, prepare?: () => void): Promise<Page> {
  const page = await device.open(prepare);
  await toKept(page);
  return page;
}

/** Opens the start, with its tools: a device with kept sessions opens on these. */
export async function openStart(device: FaultDevice, prepare?: () => void): Promise<Page> {
  const page = await device.open(prepare);
  const example = page.getByRole('button', { name: 'Open the example' });
  const back = page.getByRole('button', { name: /^Back to the start/ });
  await example.or(back).first().waitFor();
  if (await back.isVisible()) await back.click();
  await example.waitFor();
  return page;
}

/** To the newest kept session, with its sets. */
export async function toKept(page: Page): Promise<void> {
  await openKeptSessions(page);
  await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().waitFor({ timeout: longestMs });
}

/** Gives the passphrase of a locked device, and lets what is still to do be done. */
export async function unlock(page: Page): Promise<void> {
  const locked = page.getByRole('heading', { name: 'What is kept on this device is locked' });
  await locked.waitFor({ timeout: longestMs });
  await page.getByLabel('Passphrase', { exact: true }).fill(passphrase);
  await page.keyboard.press('Enter');
  await locked.waitFor({ state: 'hidden', timeout: longestMs });
}
