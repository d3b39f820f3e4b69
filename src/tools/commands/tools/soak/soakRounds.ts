import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Locator, Page } from '@playwright/test';
import type { PlanDocument } from '#documents/plan/planDocument';
import { giveFile } from '../giveFile';
import { answerScales, goToCamera, goToSet } from '../homePages';
import { openKeptSessions } from '../openKeptSessions';
import { projectRoot } from '../projectRoot';

/** Other programs may take the processor meanwhile, ms. */
const longMs = 240_000;
/** To be set as the page's own patience, ms. */
export const usualMs = 60_000;

const shortFilm = join(projectRoot, 'fixtures/short.mp4');
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const table = (page: Page) => page.getByRole('grid', { name: 'Repetitions' }).getByRole('row').first();

/** How long a set is recorded, ms. */
const setMs = 10_000;
/** How long it is tried to end it, ms. */
const endMs = 15_000;

/**
 * A set at home after a plan, from the start of the program and back: recorded, kept, and measured again from its video. It
 * starts and ends by a press, since on a busy machine the guide waits for more pictures a second.
 */
export async function recordSet(page: Page, plan: PlanDocument): Promise<void> {
  await goToCamera(page, plan);
  await goToSet(page);
  await press(page, 'Start anyway');
  const phase = (name: string) => page.locator(`.film[data-phase="${name}"]`);
  await phase('working').waitFor({ timeout: longMs });
  await page.waitForTimeout(setMs);
  // Where all of it was done meanwhile, there is nothing to end.
  const end = page.getByRole('button', { name: 'End this set' }).first();
  await end.click({ timeout: endMs }).catch(() => undefined);
  await phase('all-done').waitFor({ timeout: longMs });
  await press(page, 'Say how it was');
  await answerScales(page);
  await press(page, 'Save');
  // Told only once its careful measuring is over.
  await page.getByText('Done well').waitFor({ timeout: longMs });
  await press(page, 'Done for today');
}

/** A video file, from the start to its review and back. */
export async function measureFile(page: Page): Promise<void> {
  await giveFile(page, { name: 'short.mp4', mimeType: 'video/mp4', bytes: readFileSync(shortFilm) });
  await page.getByText('540 × 960').waitFor();
  // The label lies over the button that it belongs to.
  await page.getByRole('radio', { name: /^Right leg/ }).check({ force: true });
  await press(page, 'Measure this video');
  await giveUpBefore(page, page.getByRole('progressbar').or(table(page)));
  await table(page).waitFor({ timeout: longMs });
  await press(page, 'New video');
}

/** Gives up the recording that was measured before, which is kept nowhere, where that is asked before something is shown. */
async function giveUpBefore(page: Page, shown: Locator): Promise<void> {
  const giveUp = page.getByRole('button', { name: 'Give it up' });
  await giveUp.or(shown).first().waitFor();
  if (await giveUp.isVisible()) await giveUp.click();
}

/** Every set of the newest kept session, each opened, stepped through and left. */
export async function openReviews(page: Page): Promise<void> {
  await openKeptSessions(page);
  const sets = page.getByRole('grid', { name: 'Sets' }).getByRole('row');
  await sets.first().waitFor();
  for (let index = 0; index < (await sets.count()); index++) {
    await sets.nth(index).click();
    await giveUpBefore(page, table(page));
    await table(page).click();
    for (const key of ['ArrowRight', 'ArrowRight', 'ArrowLeft']) await page.keyboard.press(key);
    await press(page, 'Back to kept sessions');
    await sets.first().waitFor();
  }
  await press(page, /^Back to the start/);
}
