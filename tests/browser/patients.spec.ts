import { expect, test, type Page } from '@playwright/test';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';

/** Invented, and one slip away from what is typed second. */
const pseudonym = 'Invented Heron 41';

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const patient = (page: Page) =>
  page.getByRole('list', { name: 'Patients' }).getByRole('button', { name: /heron 41|heron 42/i });
const sets = (page: Page) => page.getByRole('button', { name: /sit-to-stand, right, set \d, .*mean peak/i });

/** A saved recording is dropped, looked at, and kept. */
async function keepExample(page: Page, typed: string): Promise<void> {
  await page.locator('input[type=file]').setInputFiles(`${projectRoot}fixtures/example.session.json`);
  await press(page, 'Keep for …');
  await page.getByLabel('Filmed on').fill('2026-04-01');
  await page.getByRole('textbox', { name: 'Pseudonym' }).fill(typed);
  await press(page, /^Keep$/);
}

test('a clip is kept for a new patient, a session arrives, and the course opens each set', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await page.goto('./');
  await keepExample(page, pseudonym);
  await expect(page.getByText(`Kept for ${pseudonym}`)).toBeVisible();
  await press(page, 'New video');

  // A slip is asked about, so that it makes no second patient.
  await keepExample(page, 'invented heron 42');
  await expect(page.getByRole('alert')).toContainText('Do you mean the same patient?');
  await press(page, `Yes, ${pseudonym}`);
  await expect(page.getByText(`Kept for ${pseudonym}`)).toBeVisible();

  const [first, ...rest] = demoSessions();
  const session = { ...first!.session!, patient: pseudonym, planId: null };
  await saveSessions(page, [
    { ...first!, session },
    { ...rest[0]!, session },
  ]);
  await openAnew(page);
  await expect(patient(page)).toHaveCount(1);
  await expect(patient(page)).toContainText(`${pseudonym}2 new`);
  await patient(page).click();

  // Two sets of the first day, two of the second.
  await expect(sets(page)).toHaveCount(4);
  expect(await accessibilityFaults(page)).toEqual([]);

  // Below, what is empty is one line; the line of jumps leads there, from a session or the report as well.
  await press(page, 'Report');
  await expect(page.getByRole('article', { name: 'Report' })).toBeVisible();
  await press(page, 'Tests and questionnaires');
  await expect(page.locator(':focus')).toHaveText('Tests and questionnaires');
  const tests = page.getByRole('region', { name: 'Tests of function' });
  await expect(tests).toContainText('None is written down yet.');
  await expect(tests.getByRole('button', { name: 'Write down a test' })).toBeHidden();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await expect(tests.getByRole('button', { name: 'Write down a test' })).toBeVisible();

  await sets(page).last().focus();
  await page.keyboard.press('Home');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('grid', { name: 'Repetitions' })).toBeVisible();
  await expect(page.getByRole('heading', { level: 1 })).toContainText(/1 Apr 2026.*set 1/);
  await press(page, 'Back to the patient');
  await press(page, /5 Apr 2026, .*new/);
  await press(page, 'Nothing left to do here');
  await press(page, '‹ Back to the course');
  await page.reload();
  await expect(page.getByRole('button', { name: /5 Apr 2026, .*settled/ })).toBeVisible();
  await page.goBack();
  await expect(patient(page)).toContainText('1 new');
});

test('what was said of the body is signed as settled, opened again, and settled again; all of it stays', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  const [first] = demoSessions();
  const session = { ...first!.session!, endedBecause: { reason: 'gave-way' as const, fell: false } };
  await saveSessions(page, [{ ...first!, hasVideo: false, fromVideo: 'impossible', session }]);
  await openAnew(page);
  await page
    .getByRole('list', { name: 'Patients' })
    .getByRole('button', { name: /Blue Heron 7/ })
    .click();
  await press(page, /5 Apr 2026, .*new/);
  const sign = async (name: string) => {
    await press(page, name);
    await page.getByLabel('Your initials').fill('AB');
    await press(page, /^Sign$/);
  };
  const needs = page.getByRole('region', { name: 'Needs a look' });
  await sign('Sign as settled …');
  await expect(needs).toContainText(/Settled on .* by AB\./);
  await press(page, 'Nothing left to do here');
  await expect(page.getByText('Settled: nothing left to do')).toBeVisible();
  await sign('Open again …');
  await expect(needs).toContainText(/Opened again on .* by AB\./);
  await expect(needs).not.toContainText('Settled on');
  await expect(page.getByText('What was said of the body is to be signed as settled first.')).toBeVisible();
  expect(await accessibilityFaults(page)).toEqual([]);
  await press(page, '‹ Back to the course');
  await expect(page.getByRole('region', { name: 'Needs a look' })).toContainText('Opened again on');
  await press(page, /5 Apr 2026, .*viewed/);
  await sign('Sign as settled …');
  await expect(needs).toContainText(/Settled on .* by AB\./);
  await press(page, '‹ Back to the course');
  const log = page.getByRole('list', { name: 'Who did what' }).getByRole('listitem');
  await expect(log).toHaveText([
    /AB settled what was said of the body in the session of Sun 5 Apr 2026/,
    /AB opened again what was settled in the session of Sun 5 Apr 2026/,
    /said that nothing is left to do in the session of Sun 5 Apr 2026/,
    /AB settled what was said of the body in the session of Sun 5 Apr 2026/,
  ]);
});
