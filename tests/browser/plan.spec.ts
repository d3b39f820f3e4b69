import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { parsePlan } from '#documents/plan/parsePlan';
import { seriousFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { readQrCode } from '../support/browser/readQrCode';

async function openPlanScreen(page: Page) {
  await page.goto('./');
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await expect(page.getByRole('heading', { name: 'Write a plan for a patient' })).toBeVisible();
}

async function addTask(page: Page, name: string) {
  await page.getByRole('button', { name: 'Add a task' }).press('Enter');
  await page.getByRole('option', { name }).press('Enter');
}

/** The last of the tasks is for this leg. */
async function chooseSide(page: Page, name: string) {
  await page.getByRole('button', { name: /Side$/ }).last().press('Enter');
  await page.getByRole('option', { name }).press('Enter');
}

test('an empty plan offers the library with each leg, so that a plan takes three presses', async ({
  page,
}) => {
  await openPlanScreen(page);
  await expect(page.getByLabel('Patient’s pseudonym')).toBeFocused();
  await page.keyboard.type('Grey Otter 3');
  expect(await seriousFaults(page)).toEqual([]);
  const first = page.getByRole('list', { name: 'First task' });
  await first.getByRole('button', { name: 'Side bridge, held, left leg' }).click();
  await expect(first).toBeHidden();
  await expect(page.getByRole('region', { name: /^Task 1:/ })).toContainText('Side bridge, held');
  await page.getByRole('button', { name: 'Link and code' }).click();
  await expect(page.getByRole('img', { name: 'The plan as a QR code' })).toBeVisible();
});

const fault = (page: Page) =>
  page.getByRole('region', { name: 'Give it to the patient' }).getByRole('status');
test('a plan can be written by keyboard, undone and saved, survives a reload, and reports what makes no sense', async ({
  page,
}) => {
  await openPlanScreen(page);
  await expect(fault(page)).toHaveText(/pseudonym/);
  await expect(page.getByRole('button', { name: 'Save as a file' })).toBeDisabled();
  await page.getByLabel('Patient’s pseudonym').fill('Grey Otter 3');
  await expect(fault(page)).toHaveText('Add at least one task.');
  await addTask(page, 'Split-stance sit-to-stand');
  await chooseSide(page, 'Right leg');
  await addTask(page, 'Quadriceps press, held');
  await expect(fault(page)).toHaveText('Choose the side of task 2 (Quadriceps press, held).');
  await chooseSide(page, 'Left leg');
  await expect(page.getByText('The tasks are for different legs')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save as a file' })).toBeEnabled();

  const repetitions = page.getByLabel('Repetitions per set');
  await repetitions.fill('0');
  await repetitions.press('Tab');
  await expect(fault(page)).toHaveText('Item 1 asks for 0 repetitions, where 1 to 200 make sense.');
  await expect(page.getByRole('button', { name: 'Print' })).toBeDisabled();
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await expect(repetitions).toHaveValue('10');
  const sets = page.getByLabel('Sets').first();
  await sets.fill('1.5');
  await sets.press('Tab');
  await expect(fault(page)).toHaveText(
    'Item 1 asks for 1.5 sets, where a whole number from 1 to 20 makes sense.',
  );
  await page.getByRole('button', { name: 'Undo' }).press('Enter');
  await page.getByRole('button', { name: 'Move Quadriceps press, held up' }).press('Enter');
  await expect(page.getByRole('region', { name: /^Task 1:/ })).toHaveAccessibleName(
    'Task 1: Quadriceps press, held',
  );
  await page.getByRole('button', { name: /^Limits: knee angle 10° inward, 10° outward$/ }).press('Enter');
  const lean = page.getByRole('group', { name: 'Trunk lean', exact: true });
  await lean.getByRole('button', { name: 'Set 10°' }).first().press('Enter');
  await expect(lean.getByRole('textbox', { name: 'Towards the working side, degrees' })).toHaveValue('10°');
  const limits = page.getByRole('button', { name: /^Limits: knee angle .* · trunk lean 10° towards/ });
  await limits.press('Enter');
  await expect(lean).toBeHidden();
  // What is seldom said is closed, and its line says what is said.
  const second = page.getByRole('region', { name: /^Task 2:/ });
  const more = second.getByRole('button', { name: /^Bend, holding on/ });
  await more.press('Enter');
  await second.getByLabel('Knee bend, °').fill('60');
  await page.keyboard.press('Tab');
  await more.press('Enter');
  await expect(more).toHaveAccessibleName(/goal: .*60°/);
  await expect(second.getByLabel('Knee bend, °')).toBeHidden();
  await page.getByLabel('Your own words to the patient').fill('<script>alert(1)</script> Slowly.');
  const sheet = page.getByRole('article', { name: 'The patient’s sheet' });
  await expect(sheet).toContainText('<script>alert(1)</script> Slowly.');
  await expect(sheet).toContainText('Push through the right heel');
  expect(await seriousFaults(page)).toEqual([]);

  await page.reload();
  await expect(page.getByLabel('Patient’s pseudonym')).toHaveValue('Grey Otter 3');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).press('Enter');
  const plan = parsePlan(readFileSync(await (await download).path(), 'utf8'));
  expect(plan.items.map(({ task }) => task)).toEqual(['quad-press-hold', 'split-stance-sit-to-stand']);
  expect(plan.items[1]).toMatchObject({ limits: { 'trunk-lean': { most: 10 } } });
  expect((await download).suggestedFilename()).not.toMatch(/otter/i);
});

/** What names a page, its history, its locks, its storage and its caches, which others can read without opening them. */
const readableTraces = (page: Page) =>
  page.evaluate(async () => {
    const { storageBuckets } = navigator as unknown as { storageBuckets: { keys(): Promise<string[]> } };
    const urls: string[] = [];
    for (const name of await caches.keys())
      for (const { url } of await (await caches.open(name)).keys()) urls.push(`${name} ${url}`);
    return JSON.stringify([
      document.title,
      location.href,
      history.state,
      { ...localStorage },
      { ...sessionStorage },
      (await navigator.locks.query()).held,
      await indexedDB.databases(),
      await storageBuckets.keys(),
      urls,
    ]);
  });

test('the link shows what the plan asks before anything is kept, and disappears from the address', async ({
  page,
  browser,
  baseURL,
}) => {
  await openPlanScreen(page);
  await page.getByLabel('Patient’s pseudonym').fill('Grey Otter 3');
  await page.getByLabel('Times a week').fill('3');
  await page.getByLabel('Times a week').press('Tab');
  await page.getByText('The patient can send sessions back').click();
  await page.getByRole('button', { name: /Video that you would like/ }).press('Enter');
  await page.getByRole('option', { name: 'The video without the head' }).press('Enter');
  await addTask(page, 'Single-leg squat');
  await chooseSide(page, 'Right leg');
  await page.getByRole('button', { name: 'Link and code' }).press('Enter');
  await expect(page.getByRole('img', { name: 'The plan as a QR code' })).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);
  const link = await page.getByLabel('Link', { exact: true }).inputValue();

  // Another device: on the therapist's own one the plan is kept as soon as it is handed out.
  const context = await browser.newContext({ baseURL: baseURL! });
  const requests: string[] = [];
  context.on('request', (request) => requests.push(request.url()));
  const patient = await context.newPage();
  await patient.goto(link);
  await expect(patient.getByText('This plan is for Grey Otter 3.')).toBeVisible();
  await expect(patient.getByText('2 sets of 10 repetitions, right leg')).toBeVisible();
  await expect(patient.getByText('3 times a week.')).toBeVisible();
  await expect(patient.getByText('please include the video without your head')).toBeVisible();
  expect(new URL(patient.url()).hash).toBe('');
  expect(requests.filter((url) => url.includes('plan=1'))).toEqual([]);
  const traces = await readableTraces(patient);
  expect(traces).toContain('Overfoot');
  for (const trace of [/otter/i, /squat/i, link.slice(-40)]) expect(traces).not.toMatch(trace);
  // A reload does not lose what is shown.
  await patient.reload();
  await expect(patient.getByText('This plan is for Grey Otter 3.')).toBeVisible();

  await patient.goto(`${link.slice(0, -3)}AAA`);
  await expect(patient.getByRole('alert')).toContainText('not whole');
  await context.close();
});

test('the QR code and the saved file open as the same plan on another device', async ({ page, browser }) => {
  await openPlanScreen(page);
  await page.getByLabel('Patient’s pseudonym').fill('Grey Otter 3');
  await page.getByLabel('Your own words to the patient').fill('Slowly, and never into pain.');
  await addTask(page, 'Split-stance sit-to-stand');
  await chooseSide(page, 'Right leg');
  await addTask(page, 'Quadriceps press, held');
  await chooseSide(page, 'Right leg');
  await page.getByRole('button', { name: 'Link and code' }).press('Enter');
  const code = page.getByRole('img', { name: 'The plan as a QR code' });
  const address = await readQrCode(await code.screenshot());
  expect(address).toBe(await page.getByLabel('Link', { exact: true }).inputValue());
  await page.getByRole('button', { name: 'Close' }).press('Enter');
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).press('Enter');
  const file = {
    name: 'plan.json',
    mimeType: 'application/json',
    buffer: readFileSync(await (await download).path()),
  };

  const device = await browser.newContext();
  const patient = await device.newPage();
  const showsThePlan = async () => {
    await expect(patient.getByText('This plan is for Grey Otter 3.')).toBeVisible();
    await expect(patient.getByText('2 sets of 10 repetitions, right leg')).toBeVisible();
    await expect(patient.getByText('3 holds of 30 seconds, right leg')).toBeVisible();
    await expect(patient.getByText('Slowly, and never into pain.')).toBeVisible();
  };
  await patient.goto(address);
  await showsThePlan();
  const task = patient
    .getByRole('listitem')
    .filter({ has: patient.getByRole('heading', { name: 'Split-stance' }) });
  await expect(task.getByRole('img')).toHaveCount(4);
  await expect(task).toContainText('Push through the right heel and stand up');
  expect(await seriousFaults(patient)).toEqual([]);

  await openAnew(patient, new URL('./', address).href);
  await patient.getByRole('button', { name: 'Record yourself' }).click();
  // It was shown and not accepted, so it is shown again.
  await showsThePlan();
  await patient.getByRole('button', { name: 'Back' }).click();
  const chooser = patient.waitForEvent('filechooser');
  await patient.getByRole('button', { name: 'Open my plan' }).click();
  await (await chooser).setFiles(file);
  await showsThePlan();
  await device.close();
});

test('the focus follows a task that is moved, and goes to its neighbour when it is removed', async ({
  page,
}) => {
  await openPlanScreen(page);
  const names = ['Single-leg squat', 'Lateral step-down', 'Two-legged bend'];
  for (const name of names) await addTask(page, name);
  const tasks = page.getByRole('region', { name: /^Task \d:/ });
  const order = async () =>
    (await tasks.evaluateAll((cards) => cards.map((card) => card.getAttribute('aria-label')))).map((label) =>
      label!.replace(/^Task \d: /, ''),
    );
  const [squat, stepDown, bend] = names as [string, string, string];
  const button = (name: string) => page.getByRole('button', { name, exact: true });

  // The panel that was opened goes with its task as well.
  const about = tasks.nth(2).getByRole('button', { name: /^Stages/ });
  await about.press('Enter');
  await button(`Move ${bend} up`).press('Enter');
  await expect(button(`Move ${bend} up`)).toBeFocused();
  await page.keyboard.press('Enter');
  await expect.poll(order).toEqual([bend, squat, stepDown]);
  // It stands first and can only go down now.
  await expect(button(`Move ${bend} down`)).toBeFocused();
  await expect(tasks.nth(0).getByRole('table')).toBeVisible();
  await page.keyboard.press('Enter');
  await expect.poll(order).toEqual([squat, bend, stepDown]);
  await expect(button(`Move ${bend} down`)).toBeFocused();

  await button(`Remove ${bend}`).press('Enter');
  await expect(page.getByRole('region', { name: `Task 2: ${stepDown}` })).toBeFocused();
  await button(`Remove ${stepDown}`).press('Enter');
  await expect(page.getByRole('region', { name: `Task 1: ${squat}` })).toBeFocused();
  await button(`Remove ${squat}`).press('Enter');
  await expect(button('Add a task')).toBeFocused();
});

test('the panel of a task says when faults show, what the dose builds up to, and where limits come from', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openPlanScreen(page);
  await addTask(page, 'Split-stance sit-to-stand');
  const task = page.getByRole('region', { name: 'Task 1: Split-stance sit-to-stand' });
  await task.getByRole('button', { name: /^Stages/ }).press('Enter');
  await expect(task).toContainText('on the way, on the way back');
  await expect(task).toContainText('up to 20 to 25 good ones in a row');
  await expect(task).toContainText(
    '10° inward (the category ‘dynamic valgus’ for raters of the lateral step-down',
  );
  await expect(task).toContainText('10° outward (their category ‘dynamic varus’ in the same study)');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  expect(await seriousFaults(page)).toEqual([]);
});
