import type { Page } from '@playwright/test';
import { openPlanWriting } from './openPlanWriting';

/**
 * The therapist writes a plan of one set of split-stance sit-to-stands, for sessions that come back sealed.
 *
 * @returns  the link that the patient gets
 */
export async function writePlan(
  page: Page,
  repetitions: number,
  language: 'English' | 'Spanish' = 'English',
): Promise<string> {
  const press = (name: string) => page.getByRole('button', { name, exact: true }).click();
  await openPlanWriting(page);
  await page.getByLabel('Patient’s pseudonym').fill('Grey Otter 3');
  await page.getByText('The patient can send sessions back').click();
  if (language !== 'English') {
    await page.getByRole('button', { name: /Language of the patient’s pages/ }).click();
    await page.getByRole('option', { name: language }).click();
  }
  await press('Add a task');
  await page.getByRole('option', { name: 'Split-stance sit-to-stand' }).click();
  await page.getByRole('button', { name: /Side$/ }).press('Enter');
  await page.getByRole('option', { name: 'Right leg' }).click();
  for (const [label, value] of [
    ['Sets', 1],
    ['Repetitions per set', repetitions],
  ] as const) {
    await page.getByLabel(label, { exact: true }).fill(String(value));
    await page.getByLabel(label, { exact: true }).press('Tab');
  }
  await press('Link and code');
  const link = await page.getByLabel('Link', { exact: true }).inputValue();
  await press('Close');
  return link;
}
