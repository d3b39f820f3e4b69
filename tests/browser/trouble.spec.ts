import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { openStart } from '../support/browser/openStart';
import { countKept, demoSessions, saveSessions } from '../support/browser/saveSessions';

const details = (page: Page) => page.getByLabel('Technical details');

test('a screen that fails while it is drawn leaves a page that keeps the data and offers to save it', async ({
  page,
}) => {
  await saveSessions(page, demoSessions());
  const before = await countKept(page);
  await openStart(page);
  await page.getByRole('button', { name: 'Open the example' }).click();
  await expect(page.getByRole('grid', { name: 'Repetitions' })).toBeVisible();
  await page.evaluate(() => {
    // What the review draws with fails, until it is asked for no longer.
    const { findLast } = Array.prototype;
    let isBroken = true;
    Object.assign(window, { repair: () => (isBroken = false) });
    Object.assign(Array.prototype, {
      findLast(this: unknown[], ...asked: Parameters<typeof findLast>) {
        if (isBroken) throw new RangeError('Blue Heron 7 has a negative radius');
        return findLast.apply(this, asked);
      },
    });
    Object.assign(CanvasRenderingContext2D.prototype, {
      clearRect() {
        if (isBroken) throw new RangeError('Blue Heron 7 has a negative radius');
      },
    });
  });
  await page.setViewportSize({ width: 700, height: 700 });
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('heading', { name: 'This screen stopped working' })).toBeVisible();
  await page.getByText('Technical details, without health data').click();
  await expect(details(page)).toHaveValue(/kind: RangeError\nscreen: review/);
  expect(await details(page).inputValue()).not.toContain('Heron');
  await page.evaluate(() => (window as unknown as { repair: () => void }).repair());
  await page.getByRole('button', { name: 'Backup' }).click();
  await expect(page.getByRole('heading', { name: 'Backup of everything' })).toBeVisible();
  await page.keyboard.press('Escape');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save the open recording as a file' }).click();
  expect((await download).suggestedFilename()).toMatch(/^overfoot-session-.*\.json$/);
  await page.getByRole('button', { name: 'Go to the start' }).click();
  await expect(page.getByRole('button', { name: 'Open the example' })).toBeVisible();
  expect(await countKept(page)).toEqual(before);
});

/** No database opens, and none is refused. */
const silenceStorage = (page: Page) =>
  page.addInitScript(() => {
    IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
  });

test('no way in at home is offered before the kept plans are read', async ({ page }) => {
  await silenceStorage(page);
  await page.goto('./');
  await page.getByRole('button', { name: 'Record yourself' }).click();
  await expect(page.getByText('Looking for your plan …')).toBeVisible();
  await expect(page.locator('input[type=file]')).toHaveCount(0);
  await expect(page.getByText('You cannot start yet')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Open my plan' })).toBeDisabled();
});

test('storage that never answers ends in a sentence, and the rest of the program opens', async ({ page }) => {
  await silenceStorage(page);
  await page.goto('./');
  await expect(page.getByRole('button', { name: 'Open the example' })).toBeVisible({ timeout: 10_000 });
  await openKeptSessions(page);
  await expect(page.getByText(/storage does not answer.*Close all other tabs/)).toBeVisible({
    timeout: 10_000,
  });
});

test('an opening that never ends offers to load the page again', async ({ page }) => {
  await page.addInitScript(() => {
    LockManager.prototype.request = () => new Promise(() => undefined);
  });
  await page.clock.install();
  await page.goto('./');
  await expect(page.getByText('Opening …')).toBeVisible();
  await page.clock.fastForward(13_000);
  await expect(page.getByText('Opening takes longer than usual')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Reload the page' })).toBeVisible();
});

test('words without a place to break stay within a phone', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 800 });
  const example = JSON.parse(readFileSync(`${projectRoot}fixtures/example.plan.json`, 'utf8')) as object;
  const unbroken = `https://clinic.example/${'a'.repeat(150)}`;
  const plan = { ...example, words: unbroken, howOften: unbroken, beyondPainLimit: unbroken };
  await page.goto('./');
  await page.getByRole('button', { name: 'Record yourself' }).click();
  await page.locator('input[type=file]').setInputFiles({
    name: 'plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(plan)),
  });
  await expect(page.getByText(unbroken).first()).toBeVisible();
  const widthPx = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(widthPx).toBeLessThanOrEqual(390);
});
