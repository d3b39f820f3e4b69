import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { parsePlan } from '../../src/plan/parsePlan';

async function openPlanScreen(page: Page) {
  await page.goto('./');
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await expect(page.getByRole('heading', { name: 'Write a plan for a patient' })).toBeVisible();
}

async function addTask(page: Page, name: string) {
  await page.getByRole('button', { name: 'Add a task' }).press('Enter');
  await page.getByRole('option', { name }).press('Enter');
}

const fault = (page: Page) => page.getByRole('region', { name: 'Hand it out' }).getByRole('status');
const serious = async (page: Page) => {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.filter(({ impact }) => impact === 'serious' || impact === 'critical');
};

test('a plan is written by keyboard, says what makes no sense, is undone, kept over a reload, and saved', async ({
  page,
}) => {
  await openPlanScreen(page);
  await expect(fault(page)).toHaveText(/pseudonym/);
  await expect(page.getByRole('button', { name: 'Save as a file' })).toBeDisabled();
  await page.getByLabel('Patient’s pseudonym').fill('Grey Otter 3');
  await expect(fault(page)).toHaveText('Add at least one task.');
  await addTask(page, 'Split-stance sit-to-stand');
  await addTask(page, 'Quadriceps press, held');
  await expect(page.getByRole('button', { name: 'Save as a file' })).toBeEnabled();

  const repetitions = page.getByLabel('Repetitions a set');
  await repetitions.fill('0');
  await repetitions.press('Tab');
  await expect(fault(page)).toHaveText('Item 1 asks for 0 repetitions, where 1 to 200 make sense.');
  await expect(page.getByRole('button', { name: 'Print' })).toBeDisabled();
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await expect(repetitions).toHaveValue('10');
  await page.getByRole('button', { name: 'Move Quadriceps press, held up' }).press('Enter');
  await expect(page.getByRole('region', { name: /^Task 1:/ })).toHaveAccessibleName(
    'Task 1: Quadriceps press, held',
  );
  await page.getByLabel('Your own words to the patient').fill('<script>alert(1)</script> Slowly.');
  const sheet = page.getByRole('article', { name: 'The patient’s sheet' });
  await expect(sheet).toContainText('<script>alert(1)</script> Slowly.');
  await expect(sheet).toContainText('Push through the right heel');
  expect(await serious(page)).toEqual([]);

  await page.reload();
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await expect(page.getByLabel('Patient’s pseudonym')).toHaveValue('Grey Otter 3');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).press('Enter');
  const plan = parsePlan(readFileSync(await (await download).path(), 'utf8'));
  expect(plan.items.map(({ task }) => task)).toEqual(['quad-press-hold', 'split-stance-sit-to-stand']);
  expect((await download).suggestedFilename()).not.toMatch(/otter/i);
});

test('the link shows what the plan asks before anything is kept, and leaves the address', async ({
  page,
  context,
}) => {
  await openPlanScreen(page);
  await page.getByLabel('Patient’s pseudonym').fill('Grey Otter 3');
  await addTask(page, 'Single-leg squat');
  await page.getByRole('button', { name: 'Link and code' }).press('Enter');
  await expect(page.getByRole('img', { name: 'The plan as a QR code' })).toBeVisible();
  expect(await serious(page)).toEqual([]);
  const link = await page.getByLabel('Link', { exact: true }).inputValue();

  const requests: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  const patient = await context.newPage();
  await patient.goto(link);
  await expect(patient.getByRole('heading', { name: 'Hello Grey Otter 3, this is for today' })).toBeVisible();
  await expect(patient.getByText('2 sets of 10 repetitions, right leg')).toBeVisible();
  expect(new URL(patient.url()).hash).toBe('');
  expect(requests.filter((url) => url.includes('plan=1'))).toEqual([]);
  // Gone back without a yes: nothing was kept.
  await patient.reload();
  await patient.getByRole('button', { name: 'Record yourself' }).click();
  await expect(patient.getByRole('button', { name: 'Open my plan' })).toBeVisible();

  await patient.goto(`${link.slice(0, -3)}AAA`);
  await expect(patient.getByRole('alert')).toContainText('not whole');
});
