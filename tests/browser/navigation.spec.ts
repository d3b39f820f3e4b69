import { expect, test, type Page } from '@playwright/test';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { openStart } from '../support/browser/openStart';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';

const start = (page: Page) => page.getByRole('heading', { level: 1, name: /^Overfoot checks in a video/ });
const kept = (page: Page) => page.getByRole('heading', { level: 1, name: 'Kept sessions' });
const review = (page: Page) => page.getByRole('button', { name: 'Save recording' });
const question = (page: Page) => page.getByRole('alertdialog');

async function openKeptSet(page: Page) {
  await saveSessions(page, demoSessions().slice(0, 1));
  await openStart(page);
  await openKeptSessions(page);
  await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().click();
  await expect(review(page)).toBeVisible();
}

test('Back and Forward move between the screens that were shown', async ({ page }) => {
  await openKeptSet(page);
  await page.goBack();
  await expect(kept(page)).toBeVisible();
  await page.goBack();
  await expect(start(page)).toBeVisible();
  await page.goForward();
  await expect(kept(page)).toBeVisible();
  await page.goForward();
  await expect(review(page)).toBeVisible();
  await page.getByRole('button', { name: 'Back to kept sessions' }).click();
  await expect(kept(page)).toBeVisible();
  await page.goForward();
  await expect(review(page)).toBeVisible();
});

test('a reload returns to the same screen, and from a review to where it was opened', async ({ page }) => {
  await openKeptSet(page);
  await page.reload();
  await expect(kept(page)).toBeVisible();
  await page.reload();
  await expect(kept(page)).toBeVisible();
  await page.getByRole('button', { name: 'Back to the start' }).click();
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await expect(page.getByLabel('Patient’s pseudonym')).toBeVisible();
  await page.reload();
  await expect(page.getByLabel('Patient’s pseudonym')).toBeVisible();
});

test('leaving a review with unsaved changes asks first', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Open the example' }).click();
  await expect(review(page)).toBeVisible();
  await page.goBack();
  await expect(start(page)).toBeVisible();
  await page.goForward();
  await expect(review(page)).toBeVisible();

  await page.getByRole('radio', { name: 'Left' }).check({ force: true });
  await page.goBack();
  await expect(question(page)).toContainText('Leave without saving?');
  await page.getByRole('button', { name: 'Stay here' }).click();
  await expect(question(page)).toBeHidden();
  await expect(review(page)).toBeVisible();

  let asked = 0;
  page.on('dialog', (dialog) => {
    asked++;
    void dialog.dismiss();
  });
  await page.close({ runBeforeUnload: true });
  await expect.poll(() => asked).toBe(1);

  await page.goBack();
  await page.getByRole('button', { name: 'Leave without saving' }).click();
  await expect(start(page)).toBeVisible();
  await page.getByRole('button', { name: 'Back to the result' }).click();
  await expect(review(page)).toBeVisible();
});
