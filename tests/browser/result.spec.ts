import { expect, test, type Page } from '@playwright/test';
import { deviceOf } from '#tools/commands/tools/deviceOf';
import { seriousFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { toExampleResult } from '../support/browser/toExampleResult';
import { writePlan } from '../support/browser/writePlan';

/** Videos are read slowly on a machine that does other things as well, ms. */
const longMs = 120_000;
const phone = { width: 390, height: 844 };
const sizes = [phone, { width: 844, height: 390 }, { width: 1440, height: 900 }];

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const video = (page: Page) => page.getByLabel('The measured video');

/** What stands inside of the window without scrolling sideways. */
async function expectToFit(page: Page): Promise<void> {
  const width = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(width).toBeLessThanOrEqual(0);
}

test('the result comes once, when it is final; then two repetitions can be looked at slowly', async ({
  page: clinic,
  browser,
}) => {
  test.setTimeout(600_000);
  const context = await browser.newContext({ viewport: phone });
  let measure = () => {};
  const careful = new Promise<void>((resolve) => (measure = resolve));
  const page = await toExampleResult(context, await writePlan(clinic, 3), careful);
  const progress = page.getByRole('progressbar', { name: /being measured carefully/ });
  await expect(progress).toBeVisible();
  await expect(page.getByText('Done well')).toBeHidden();
  await expect(page.getByText('To practise')).toBeHidden();
  measure();
  await expect(progress).toBeHidden({ timeout: longMs });
  const told = page.locator('.told-text');
  await expect(told).toHaveCount(2);
  await expect(told.first()).toHaveText(/^In about \d of 3 repetitions your knee stayed over the foot\.$/);
  await expect(told.last()).toHaveText(/^In the third repetition your knee went inward/);
  await expect(page.getByText('3 of 3 done')).toBeVisible();
  await expect(page.getByText('may be less exact')).toBeHidden();
  await expect(page.getByRole('button', { name: 'View recording' })).toBeHidden();
  expect(await seriousFaults(page)).toEqual([]);

  await press(page, 'Look at it in slow motion');
  await expect(page.getByRole('tab', { name: 'Your best one' })).toHaveAttribute('aria-selected', 'true');
  const rate = () => video(page).evaluate((shown: HTMLVideoElement) => shown.playbackRate);
  const timeS = () => video(page).evaluate((shown: HTMLVideoElement) => shown.currentTime);
  const isPaused = () => video(page).evaluate((shown: HTMLVideoElement) => shown.paused);
  await expect.poll(isPaused).toBe(false);
  expect(await rate()).toBe(0.5);
  await expect(page.getByText(/^In the \w+ repetition you stayed in the lane\.$/)).toBeVisible();
  for (const size of sizes) {
    await page.setViewportSize(size);
    await expectToFit(page);
    await expect(video(page)).toBeInViewport();
    await expect(page.getByRole('button', { name: 'Pause' })).toBeInViewport();
  }
  await page.setViewportSize(phone);
  expect(await seriousFaults(page)).toEqual([]);

  // With the keyboard.
  await page.getByRole('tab', { name: 'Your best one' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('tab', { name: 'One to practise' })).toHaveAttribute('aria-selected', 'true');
  await expect(page.getByText(/^In the \w+ repetition your knee went inward, towards/)).toBeVisible();
  await expect.poll(isPaused).toBe(false);
  const timesS: number[] = [];
  // A repetition of some four seconds at half speed, and it begins again.
  await expect
    .poll(
      async () => {
        timesS.push(await timeS());
        return timesS.some((time, at) => at > 0 && time < timesS[at - 1]!);
      },
      { timeout: 60_000, intervals: [250] },
    )
    .toBe(true);
  expect(Math.max(...timesS) - Math.min(...timesS)).toBeLessThan(8);
  await page.getByRole('button', { name: 'Pause' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(isPaused).toBe(true);

  // Where no motion is wanted, it is a picture until it is played.
  await press(page, 'Back to the result');
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await press(page, 'Look at it in slow motion');
  await expect(page.getByRole('button', { name: 'Play' })).toBeVisible();
  await expect
    .poll(() => video(page).evaluate((shown: HTMLVideoElement) => shown.readyState))
    .toBeGreaterThan(1);
  expect(await isPaused()).toBe(true);
  await press(page, 'Play');
  await expect.poll(isPaused).toBe(false);
  expect(await rate()).toBe(0.5);
  await context.close();
});

test('a patient who does not wait sees the first result, and finds the careful one on Today; sending says what was done', async ({
  page: clinic,
  browser,
  baseURL,
}) => {
  test.setTimeout(600_000);
  const context = await browser.newContext({
    viewport: phone,
    storageState: deviceOf('exercises', baseURL!),
  });
  let measure = () => {};
  const careful = new Promise<void>((resolve) => (measure = resolve));
  const page = await toExampleResult(context, await writePlan(clinic, 3), careful);
  await press(page, 'Don’t wait: show the first result');
  await expect(page.getByText('Done well')).toBeVisible();
  await expect(page.getByText(/may be less exact\. The careful one follows/)).toBeVisible();

  await press(page, 'Send to your therapist');
  await expect(page.getByText('Now the first result is sent')).toBeVisible();
  await expect(page.getByText('The words of your therapist’s key are')).toBeHidden();
  await page.getByText('How it is protected').click();
  await expect(page.getByText('The words of your therapist’s key are')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Send', exact: true })).toBeDisabled();
  const none = page.getByRole('radio', { name: /^No video/ });
  await expect(none).toBeEnabled();
  await none.check({ force: true });
  const download = page.waitForEvent('download');
  await press(page, 'Send');
  await download;
  await expect(page.getByText(/^Saved as a file at \d\d:\d\d\.$/)).toBeVisible();
  await expect(page.getByText('Send that file to your therapist as you agreed.')).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);
  await press(page, 'Done');

  measure();
  await openAnew(page);
  await expect(page.getByRole('heading', { name: 'Today' })).toBeVisible();
  await expect(page.getByText('Not sent yet')).toBeHidden();
  const last = page.getByRole('button', {
    name: /^Last time, .*: about \d of 3 repetitions stayed over the foot\./,
  });
  await expect(last).toBeVisible({ timeout: longMs });
  // All of it is one press away.
  await last.click();
  await expect(page.getByRole('heading', { level: 1, name: /^Last time, / })).toBeVisible();
  await expect(page.getByText('Done well')).toBeVisible();
  await expect(page.getByText('Pain before: 1, a little pain')).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);
  await press(page, 'Back');
  await expect(page.getByRole('heading', { level: 1, name: 'Today' })).toBeVisible();
  await context.close();
});
