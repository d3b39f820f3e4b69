import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';
import { fhirFaults } from '../support/fhirFaults';

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();

async function openPatient(page: Page): Promise<string> {
  const kept = demoSessions();
  const { patient } = kept[0]!.session!;
  await saveSessions(page, kept);
  await openAnew(page);
  await page
    .getByRole('list', { name: 'Patients' })
    .getByRole('button', { name: new RegExp(patient, 'i') })
    .click();
  await expect(page.getByRole('heading', { level: 1, name: patient })).toBeVisible();
  return patient;
}

test('a set is judged by eye with the keyboard, before its result, and held against it', async ({ page }) => {
  await openPatient(page);
  const card = page.getByRole('region', { name: 'Your own eye' });
  await card.getByRole('heading', { name: 'Your own eye' }).click();
  await card.getByLabel('Set to judge by eye').selectOption({ index: 1 });
  await card.getByRole('button', { name: 'Judge by eye' }).click();
  const show = page.getByRole('dialog', { name: 'Judge by eye' });
  await expect(show.getByRole('status')).toHaveText('Repetition 1 of 6');
  await expect(show.locator('canvas')).toHaveCount(0);
  await expect(show).not.toContainText(/inward \d|mean peak|%/);
  expect(await accessibilityFaults(page)).toEqual([]);

  await page.keyboard.press('i');
  await page.keyboard.press('o');
  await expect(show.getByRole('status')).toHaveText('Repetition 3 of 6');
  await page.keyboard.press('Backspace');
  await expect(show.getByRole('status')).toHaveText('Repetition 2 of 6');
  for (const key of ['i', 'o', 'i', 's']) await page.keyboard.press(key);
  await show.getByRole('button', { name: 'Out of line (O)' }).click();
  await expect(show.getByRole('status')).toHaveText('5 judged, 1 skipped');
  await press(page, 'Keep, and compare');
  await expect(show.getByRole('alert')).toHaveText('Sign with your initials.');
  await show.getByLabel('Your initials').fill('io');
  await show.getByLabel('Your initials').press('Enter');

  await expect(show).toBeHidden();
  await expect(card.getByRole('heading', { name: 'io' })).toBeVisible();
  await expect(card).toContainText(
    /In line both ways 3, out of line both ways 2; out of line by eye alone 0/,
  );
  await expect(card).toContainText('Kappa takes 10 repetitions at least; these are too few.');
  await expect(card.getByLabel('Set to judge by eye')).toContainText('judged by io');
});

test('a patient’s record is saved as a valid bundle that names nobody but the pseudonym', async ({
  page,
}) => {
  const patient = await openPatient(page);
  const download = page.waitForEvent('download');
  await press(page, 'Record as FHIR');
  const file = await download;
  expect(file.suggestedFilename()).toMatch(/^overfoot-fhir-\d{4}-\d\d-\d\d\.json$/);
  const bundle = JSON.parse(readFileSync(await file.path(), 'utf8')) as { type: string };
  expect(bundle.type).toBe('document');
  expect(fhirFaults(bundle)).toEqual([]);
  expect(JSON.stringify(bundle)).toContain(patient);
});
