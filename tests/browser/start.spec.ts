import { expect, test, type Page } from '@playwright/test';
import { openAnew } from '../support/browser/openAnew';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';

/** A device on which nobody has said anything yet. */
test.use({ storageState: { cookies: [], origins: [] }, viewport: { width: 390, height: 844 } });

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const question = (page: Page) => page.getByRole('heading', { name: 'What would you like to do?' });
const title = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });

test('a newcomer reads one sentence and is asked one thing, without scrolling', async ({ page }) => {
  await page.goto('./');
  await expect(question(page)).toBeVisible();
  await expect(
    page.getByRole('group', { name: 'What would you like to do?' }).getByRole('button'),
  ).toHaveText(['I exercise', 'I treat people', 'Show me an example']);
  const overflowPx = await page.evaluate(() => document.documentElement.scrollHeight - innerHeight);
  expect(overflowPx).toBeLessThanOrEqual(0);
  await press(page, 'Show me an example');
  await expect(page.getByRole('grid', { name: 'Repetitions' })).toBeVisible();
  // Who wants to see more comes to the form, not to the question again.
  await press(page, 'New video');
  await expect(page.getByRole('button', { name: 'Choose a video' })).toBeVisible();
  // Looking at an example says nothing about who looks.
  await openAnew(page);
  await expect(question(page)).toBeVisible();
});

test('who exercises comes back to their exercises, and can change that', async ({ page }) => {
  await page.goto('./');
  await press(page, 'I exercise');
  await expect(title(page, 'Record yourself at home')).toBeVisible();
  await openAnew(page);
  await expect(title(page, 'Record yourself at home')).toBeVisible();
  await press(page, 'Back to the start');
  await press(page, 'I treat people');
  await expect(page.getByRole('button', { name: 'Write a plan' })).toBeVisible();
  await press(page, 'I exercise on this device');
  await expect(question(page)).toBeVisible();
});

test('who treats people comes back to the sessions of patients, once there are any', async ({ page }) => {
  await page.goto('./');
  await press(page, 'I treat people');
  await expect(page.getByRole('button', { name: 'Write a plan' })).toBeVisible();
  await openAnew(page);
  await expect(page.getByRole('button', { name: 'Write a plan' })).toBeVisible();
  await saveSessions(page, demoSessions().slice(0, 1));
  await openAnew(page);
  await expect(title(page, 'Patients')).toBeVisible();
  await press(page, 'Back to the start');
  await expect(page.getByRole('button', { name: 'Write a plan' })).toBeVisible();
});

test('no button moves from beneath a finger when the typeface comes late', async ({ page }) => {
  await page.route('**/*.woff2', async (route) => {
    await new Promise((resolve) => setTimeout(resolve, 400));
    await route.continue();
  });
  await page.addInitScript(() => {
    const shifts: number[] = [];
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries())
        shifts.push((entry as PerformanceEntry & { value: number }).value);
    }).observe({ type: 'layout-shift', buffered: true });
    Object.assign(window, { shifts });
  });
  await page.goto('./');
  await expect(question(page)).toBeVisible();
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(500);
  expect(await page.evaluate(() => (window as unknown as { shifts: number[] }).shifts)).toEqual([]);
});
