import { readFileSync } from 'node:fs';
import { expect, test, type Browser, type Locator, type Page } from '@playwright/test';
import type { PlanDocument } from '#documents/plan/planDocument';
import { acceptPlan, openPlanFile } from '#tools/commands/tools/homePages';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { openAnew } from '../../support/browser/openAnew';
import { openSentFile } from '../../support/browser/openSentFile';
import { stageCamera } from '../../support/browser/stageCamera';
import { writePlan } from '../../support/browser/writePlan';
import { smallHold, smallItem, smallPlan } from '../../support/smallPlan';

const viewport = { width: 390, height: 844 };
test.use({ viewport });

/** Two sets of one short hold: nothing is filmed, so that nothing is waited for. */
const holds = smallHold({ sides: ['right'], sets: 2, holds: 1, holdSeconds: 1, restSeconds: 1 });
/** From the start of a set without a camera to its end, with what is said before it. */
const setMs = 120_000;
const stepMs = 500;
const words = 'Stop and call the practice.';
const ifItGivesWay = 'Sit down and call the practice.';

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
/** The label lies over the button that it belongs to. */
const choose = (page: Page, score: number, question?: string) =>
  (question === undefined ? page : page.getByRole('radiogroup', { name: question }))
    .getByRole('radio', { name: new RegExp(`^${score}\\b`) })
    .check({ force: true });
const title = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });
const phase = (page: Page, name: string) => page.locator(`.film[data-phase="${name}"]`);

/** The plan's file, from the start of the program. */
async function openPlan(page: Page, change: Partial<PlanDocument> = {}): Promise<void> {
  await openAnew(page);
  await openPlanFile(page, smallPlan({ items: [holds], ...change }));
}

async function toPain(page: Page, change: Partial<PlanDocument> = {}): Promise<void> {
  await openPlan(page, change);
  await acceptPlan(page);
  await press(page, 'None of these');
}

async function toExercise(page: Page, change: Partial<PlanDocument> = {}): Promise<void> {
  await toPain(page, change);
  await choose(page, 1);
  await press(page, 'Continue');
}

/** Lets the time of a set without a camera pass until something is shown. */
async function passUntil(page: Page, shown: Locator): Promise<void> {
  for (let passedMs = 0; passedMs < setMs && !(await shown.isVisible()); passedMs += stepMs)
    await page.clock.runFor(stepMs);
  await expect(shown).toBeVisible();
}

/** The newest session in the list of kept sessions, on the same device. */
async function listed(page: Page) {
  await openAnew(page);
  await openKeptSessions(page);
  return page.getByRole('option').first();
}

test('a warning sign is kept the moment it is chosen, and asked about until a professional has cleared it', async ({
  page,
}) => {
  await openPlan(page);
  await acceptPlan(page);
  await expect(title(page, 'Does one of these apply to you?')).toBeVisible();
  await page.getByRole('button', { name: /^One calf is newly swollen/ }).click();
  await expect(page.getByText(/See a doctor today\. With chest pain/)).toBeVisible();
  await expect(button(page, 'None of these')).toBeHidden();

  // The tab is closed without another word.
  await openPlan(page);
  await expect(title(page, 'Last time you told us')).toBeVisible();
  await expect(page.getByText(/^One calf is newly swollen/)).toBeVisible();
  await press(page, 'Not yet');
  await expect(title(page, 'Please have it seen first')).toBeVisible();
  await expect(page.getByText(/See a doctor today\. With chest pain/)).toBeVisible();
  await expect(page.getByRole('button')).toHaveText(['End here for today']);
  await press(page, 'End here for today');

  await openPlan(page);
  await press(page, 'Yes, and I may exercise');
  await press(page, 'My doctor');
  await acceptPlan(page);
  // The whole list was answered before.
  await expect(title(page, 'Anything new?')).toBeVisible();
  await expect(page.getByRole('heading', { level: 2 })).toHaveCount(3);
  await press(page, 'Nothing new');
  await expect(title(page, 'How much does your knee hurt right now?')).toBeVisible();
  await openPlan(page);
  await expect(title(page, 'Hello. This is your plan')).toBeVisible();
});

test('a sign that was a mistake closes nothing, and stays in the record', async ({ page }) => {
  await openPlan(page);
  await acceptPlan(page);
  await page.getByRole('button', { name: /^A wound on the leg/ }).click();
  await press(page, 'That was a mistake');
  await press(page, 'None of these');
  await expect(title(page, 'How much does your knee hurt right now?')).toBeVisible();
  await expect(await listed(page)).toContainText('sign taken back');
});

test('what was said without a set is sealed, sent, first in the therapist’s list, and signed as settled', async ({
  page,
  browser,
}) => {
  const clinic = page;
  const link = await writePlan(clinic, 2);
  const patient = await openPatient(browser, link);
  await acceptPlan(patient);
  await patient.getByRole('button', { name: /^The leg or foot is newly numb/ }).click();
  await press(patient, 'End here');
  await expect(title(patient, 'Do not exercise today')).toBeVisible();
  await expect(button(patient, 'Another session')).toBeHidden();
  await press(patient, 'Send to your therapist');
  const download = patient.waitForEvent('download');
  await press(patient, 'Send');
  const file = await download;
  const buffer = readFileSync(await file.path());
  await patient.context().close();

  await openSentFile(clinic, { name: file.suggestedFilename(), buffer });
  await expect(clinic.getByRole('log')).toContainText(/Grey Otter 3, .*: kept/);
  const first = clinic.getByRole('option').first();
  await expect(first).toContainText('sign: numb or weak');
  await first.click();
  const needs = clinic.getByRole('region', { name: 'Needs a look' });
  await expect(needs.getByRole('listitem').first()).toContainText('The leg or foot is newly numb');
  await press(clinic, 'Sign as settled …');
  await clinic.getByLabel('Your initials').fill('AB');
  await press(clinic, 'Sign');
  await expect(needs).toContainText(/Settled on .* by AB\./);
  await expect(button(clinic, 'Sign as settled …')).toBeHidden();
});

async function openPatient(browser: Browser, link: string): Promise<Page> {
  const context = await browser.newContext({ viewport });
  const patient = await context.newPage();
  await patient.goto(link);
  return patient;
}

test('a session that did not begin because of pain is a record, and is asked about', async ({ page }) => {
  await toPain(page);
  await choose(page, 5);
  await expect(page.getByText(/It hurts 5 out of 10 now, which is above 4/)).toContainText(words);
  await expect(page.getByText(/Your therapist says:/)).toBeVisible();
  await expect(page.getByRole('button', { name: /told me to go on/ })).toBeHidden();
  await press(page, 'End here for today');
  await expect(page.getByText(`Your therapist says: ${words}`)).toBeVisible();
  const first = await listed(page);
  await expect(first).toContainText('not begun: pain');
  await expect(first).toContainText('pain 5, limit 4');
  await openPlan(page);
  await expect(page.getByText('It hurt 5 out of 10.')).toBeVisible();
});

test('going on above the limit is offered where the plan allows it, not from 7 on, and is written down', async ({
  page,
}) => {
  await toPain(page, { mayGoOnAbove: true });
  await choose(page, 7);
  const goOn = page.getByRole('button', { name: /told me to go on/ });
  await expect(page.getByText(/which is above 4/)).toBeVisible();
  await expect(goOn).toBeHidden();
  await choose(page, 6);
  await goOn.click();
  await expect(phase(page, 'ready')).toBeVisible();
  await expect(await listed(page)).toContainText('went on at 6, limit 4');
});

test('each knee is asked where both legs work, and two above the usual pain is too much', async ({
  page,
}) => {
  await toPain(page, { items: [{ ...holds, sides: ['left', 'right'] }], usualPain: 1 });
  await choose(page, 2, 'Left knee');
  await expect(button(page, 'Choose a number')).toBeDisabled();
  await choose(page, 4, 'Right knee');
  await expect(page.getByText(/It hurts 4 out of 10 now, which is above 3/)).toBeVisible();
  await choose(page, 3, 'Right knee');
  await expect(button(page, 'Continue')).toBeEnabled();
});

test('stop is one large target, then five answers; after the knee gave way it ends with the plan’s words', async ({
  page,
}) => {
  await toExercise(page);
  const stop = await button(page, 'Stop').boundingBox();
  // A tenth of the height of the screen, and half of its width.
  expect(stop!.height).toBeGreaterThanOrEqual(64);
  expect(stop!.width).toBeGreaterThanOrEqual(viewport.width / 2);
  await press(page, 'Stop');
  const choices = page.getByRole('alert').getByRole('button');
  await expect(choices).toHaveText([
    'Pain',
    'The knee gave way',
    'The knee locked or is stuck',
    'Dizzy or unsteady',
    'Something else',
    'Nothing, carry on',
  ]);
  for (const choice of (await choices.all()).slice(0, 5))
    expect((await choice.boundingBox())!.height).toBeGreaterThanOrEqual(64);
  await press(page, 'Nothing, carry on');
  await expect(phase(page, 'ready')).toBeVisible();
  await press(page, 'Stop');
  await press(page, 'The knee gave way');
  await expect(page.getByText(`Your therapist says: ${ifItGivesWay}`)).toBeVisible();
  await press(page, 'Answer a few questions');
  await press(page, 'Yes, I fell');
  // The tab is closed before anything is saved.
  await expect(await listed(page)).toContainText('stopped: knee gave way, fell');
  await openPlan(page);
  await expect(page.getByText('Your knee gave way.')).toBeVisible();
  await press(page, 'Not yet');
  await expect(page.getByText(`Your therapist says: ${ifItGivesWay}`)).toBeVisible();
  await expect(page.getByRole('button')).toHaveText(['End here for today']);
});

test('the rule is said before the first movement; the next set waits for how much the last one hurt', async ({
  page,
}) => {
  await page.clock.install();
  await toExercise(page);
  const caption = (words: RegExp) => page.locator('.film-dock p[aria-live]').filter({ hasText: words });
  await passUntil(page, caption(/^If it hurts more than four of ten, stop and sit down\./));
  await passUntil(page, phase(page, 'resting'));
  await passUntil(page, caption(/^Come to the screen, and choose how much it hurt\.$/));
  await expect(button(page, 'Skip the rest')).toBeHidden();
  await page.clock.runFor(2500); // The rest of one second is over.
  await expect(phase(page, 'resting')).toBeVisible();
  // The question goes with its answer.
  await page.getByRole('radio', { name: /^6\b/ }).click({ force: true });
  await expect(page.getByText(/It hurt 6 out of 10 in this set, which is above 4/)).toBeVisible();
  await expect(page.getByRole('button', { name: /told me to go on/ })).toBeHidden();
  await press(page, 'Stop for today');
  await expect(page.getByText(`Your therapist says: ${words}`)).toBeVisible();
  const first = await listed(page);
  await expect(first).toContainText('stopped: pain');
  await expect(first).toContainText('pain 6, limit 4');
});

test('too much pain in the end is answered as such', async ({ page }) => {
  await page.clock.install();
  await toExercise(page, { items: [{ ...holds, sets: 1 }] });
  await passUntil(page, phase(page, 'all-done'));
  await press(page, 'Say how it was');
  await choose(page, 3);
  await press(page, 'Continue');
  await choose(page, 8);
  await expect(page.getByText(/It hurts 8 out of 10 now/)).toContainText(words);
  await press(page, 'Continue');
  await press(page, 'Skip');
  await press(page, 'Save');
  await expect(title(page, 'That was too much for today')).toBeVisible();
  await expect(page.getByText(`Your therapist says: ${words}`)).toBeVisible();
  await expect(page.getByText(/Well done/)).toBeHidden();
  await expect(button(page, 'Another session')).toBeHidden();
});

test('a single-leg task asks for something to hold', async ({ browser }) => {
  const context = await browser.newContext({ viewport });
  await stageCamera(context);
  const page = await context.newPage();
  await toExercise(page, { items: [smallItem({ task: 'single-leg-squat', seatHeightCm: null })] });
  await press(page, 'Switch the camera on');
  await press(page, 'Begin');
  await expect(page.getByText(/^Is something firm to hold within reach of one hand/)).toBeVisible();
  await press(page, 'Yes, I have something to hold');
  await expect(page.getByText(/^Is something firm to hold/)).toBeHidden();
  await context.close();
});
