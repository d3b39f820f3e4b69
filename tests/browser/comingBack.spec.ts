import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import ICAL from 'ical.js';
import type { PlanDocument } from '#documents/plan/planDocument';
import { planToFragment } from '#documents/plan/planLink';
import { deviceOf } from '#tools/commands/tools/deviceOf';
import { acceptPlan } from '#tools/commands/tools/homePages';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { seriousFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';
import { openSentFile } from '../support/browser/openSentFile';
import { writePlan } from '../support/browser/writePlan';
import { smallHold, smallItem, smallPlan } from '../support/smallPlan';

const viewport = { width: 390, height: 844 };
test.use({
  viewport,
  timezoneId: 'Europe/Berlin',
  storageState: ({ baseURL }, give) => give(deviceOf('exercises', baseURL!)),
});

/** A Wednesday and the Friday after it. */
const wednesday = new Date('2026-05-06T10:00:00+02:00');
const friday = new Date('2026-05-08T10:00:00+02:00');
const nextFriday = new Date('2026-05-15T10:00:00+02:00');

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const title = (page: Page, name: string) => page.getByRole('heading', { level: 1, name });
const week = (page: Page) => page.getByRole('region', { name: 'This week' });
const silence = (page: Page) => page.getByRole('region', { name: /^Good to see you again/ });
/** The label lies over the button that it belongs to. */
const choose = (page: Page, score: number) =>
  page
    .getByRole('radio', { name: new RegExp(`^${score}\\b`) })
    .first()
    .check({ force: true });
async function openToday(page: Page): Promise<void> {
  await openAnew(page);
  await expect(title(page, 'Today')).toBeVisible();
}

/** A plan that was accepted, and its day. */
async function toAcceptedPlan(page: Page, change: Partial<PlanDocument> = {}): Promise<void> {
  const plan = smallPlan({ items: [smallItem({ sets: 1 }), smallHold({ sides: ['right'] })], ...change });
  await openAnew(page);
  await expect(button(page, 'Open my plan')).toBeVisible();
  await page.locator('input[type=file]').setInputFiles({
    name: 'plan.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(plan)),
  });
  await acceptPlan(page);
  await expect(title(page, 'Does one of these apply to you?')).toBeVisible();
  await openToday(page);
}

/** From Today to the summary. */
async function sayDone(page: Page, painDuring: number, dayAfter: number | null = null): Promise<void> {
  await press(page, 'Done without filming');
  await press(page, 'Yes, all of it');
  if (dayAfter !== null) {
    await expect(
      title(page, 'How much did your knee hurt the day after last time, at its most?'),
    ).toBeVisible();
    await choose(page, dayAfter);
    await press(page, 'Continue');
  }
  await expect(title(page, 'How much did your knee hurt during the exercises, at its most?')).toBeVisible();
  await choose(page, painDuring);
  await press(page, 'Continue');
  await expect(title(page, 'How much does your knee hurt now, afterwards?')).toBeVisible();
  await choose(page, 1);
  await press(page, 'Continue');
  await press(page, 'Skip');
  await press(page, 'Save');
  await expect(button(page, 'Done for today')).toBeVisible();
}

test('a reload loses no plan and no answer, and Back leads a page back, on any page before the set', async ({
  page,
}) => {
  const plan = smallPlan({ items: [smallItem()], painLimit: 3 });
  const reloadTo = async (heading: string) => {
    await page.reload();
    await expect(title(page, heading)).toBeVisible();
  };
  const backTo = async (heading: string) => {
    await page.goBack();
    await expect(title(page, heading)).toBeVisible();
  };
  await page.goto(`./#${planToFragment(plan)}`);
  await expect(title(page, 'Hello. This is your plan')).toBeVisible();
  await reloadTo('Hello. This is your plan');
  await acceptPlan(page);
  await expect(title(page, 'Does one of these apply to you?')).toBeVisible();
  await reloadTo('Today');
  await press(page, 'Start my exercises');
  await acceptPlan(page);
  await press(page, 'None of these');
  await expect(title(page, 'How much does your knee hurt right now?')).toBeVisible();
  for (const before of [
    'Does one of these apply to you?',
    'When to stop',
    'Have this ready',
    'Hello. This is your plan',
  ])
    await backTo(before);
  await acceptPlan(page);
  await press(page, 'None of these');
  await choose(page, 5);
  await expect(page.getByText(/It hurts 5 out of 10 now/)).toBeVisible();
  await reloadTo('Today');
  // What was said is asked about.
  await page.getByRole('radio', { name: /^1\b/ }).click({ force: true });
  await expect(title(page, 'Last time you told us')).toBeVisible();
  await backTo('How much does your knee hurt right now?');
  await reloadTo('Today');
});

test('Today shows the days of the week that are done, and says how many times are left', async ({ page }) => {
  await page.clock.setFixedTime(wednesday);
  await toAcceptedPlan(page, { perWeek: 2 });
  await expect(week(page).getByRole('listitem')).toHaveCount(7);
  await expect(week(page)).toContainText('2 times this week.');
  await expect(week(page).getByRole('listitem', { name: 'Wednesday, today', exact: true })).toBeVisible();
  await sayDone(page, 2);

  await press(page, 'Another session');
  await expect(week(page)).toContainText('1 of 2 times this week. Once more.');
  await expect(
    week(page).getByRole('listitem', { name: 'Wednesday, today: done', exact: true }),
  ).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);

  await page.clock.setFixedTime(friday);
  await openToday(page);
  await sayDone(page, 2, 3);
  await press(page, 'Another session');
  await expect(week(page)).toContainText('Done for this week.');
  await expect(week(page).getByRole('listitem', { name: 'Wednesday: done', exact: true })).toBeVisible();

  await page.clock.setFixedTime(nextFriday);
  await openToday(page);
  await expect(week(page)).not.toContainText(/done/i);
  await expect(week(page).getByRole('listitem', { name: /done/ })).toHaveCount(0);
});

test('where the plan leaves open how many times, the week is shown without a count', async ({ page }) => {
  await toAcceptedPlan(page);
  await expect(week(page).getByRole('listitem')).toHaveCount(7);
  await expect(week(page)).toHaveText('This week');
});

test('what was done without filming is sent, and the therapist’s list says so', async ({
  page: patient,
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ storageState: deviceOf('treats', baseURL!) });
  const clinic = await context.newPage();
  const link = await writePlan(clinic, 2);
  await patient.goto(link);
  await acceptPlan(patient);
  await expect(title(patient, 'Does one of these apply to you?')).toBeVisible();
  await openToday(patient);
  await press(patient, 'Done without filming');
  await press(patient, 'No');
  await expect(title(patient, 'Today')).toBeVisible();
  await sayDone(patient, 3);

  await openToday(patient);
  await patient.getByRole('button', { name: /^Send the session of/ }).click();
  await expect(patient.getByRole('radiogroup', { name: 'How much of the video?' })).toBeHidden();
  const download = patient.waitForEvent('download');
  await press(patient, 'Send');
  const file = await download;
  const buffer = readFileSync(await file.path());

  await openSentFile(clinic, { name: file.suggestedFilename(), buffer });
  await expect(clinic.getByRole('log')).toContainText(/Grey Otter 3, .*: kept/);
  const first = clinic.getByRole('option').first();
  await expect(first).toContainText('not filmed');
  await expect(first).not.toContainText('sets done');
  await first.click();
  await expect(clinic.getByRole('region', { name: 'Needs a look' })).toContainText(
    'Not filmed: the sets were done, as the patient says.',
  );
  const set = clinic.getByRole('grid', { name: 'Sets' }).getByRole('row').first();
  await expect(set).toContainText('2 prescribed');
  await expect(set).toContainText('not filmed');
  await expect(set).toContainText('Pain during: 3');
  await context.close();
});

test('too much pain without filming is answered with the plan’s words, and counts as done', async ({
  page,
}) => {
  await toAcceptedPlan(page, { perWeek: 1, painLimit: 4 });
  await press(page, 'Done without filming');
  await press(page, 'Yes, all of it');
  await choose(page, 6);
  await expect(page.getByText(/It hurt 6 out of 10/)).toContainText('Stop and call the practice.');
  await press(page, 'Continue');
  // The tab is closed before the session is saved.
  await openToday(page);
  await expect(week(page)).toContainText('Done for this week.');
});

test('the days go into a calendar file at the time that was chosen', async ({ page }) => {
  await page.clock.setFixedTime(wednesday);
  await toAcceptedPlan(page, { perWeek: 3, reviewDate: null });
  await press(page, 'More');
  await press(page, 'Put it in my calendar');
  const dialog = page.getByRole('dialog', { name: 'When do you want to be reminded?' });
  await expect(dialog).toContainText('Monday, Wednesday and Friday.');
  await expect(dialog.getByLabel('Times a week')).toBeHidden();
  await dialog.getByLabel('Time of day').fill('07:30');
  expect(await seriousFaults(page)).toEqual([]);
  const download = page.waitForEvent('download');
  await press(page, 'Save for my calendar');
  const file = await download;
  expect(file.suggestedFilename()).toBe('exercises.ics');
  const text = readFileSync(await file.path(), 'utf8');
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  const event = new ICAL.Event(calendar.getFirstSubcomponent('vevent')!);
  expect(event.summary).toBe('Exercises');
  const times = event.iterator();
  expect([times.next(), times.next()].map(String)).toEqual(['2026-05-08T07:30:00', '2026-05-11T07:30:00']);
  await expect(dialog).toBeHidden();
});

test('after seven silent days it is asked once what got in the way; the answer is listed', async ({
  page,
}) => {
  await page.clock.setFixedTime(wednesday);
  await toAcceptedPlan(page, { returnKeys: [`age1${'q'.repeat(58)}`] });
  await sayDone(page, 1);
  await page.clock.setFixedTime(new Date(wednesday.getTime() + 6.9 * 24 * 3_600_000));
  await openToday(page);
  await expect(week(page)).toBeVisible();
  await expect(silence(page)).toBeHidden();

  await page.clock.setFixedTime(nextFriday);
  await openToday(page);
  await expect(silence(page).getByRole('button')).toHaveCount(6);
  expect(await seriousFaults(page)).toEqual([]);
  await press(page, 'It hurts');
  await expect(page.getByText('Tell your therapist before you exercise again.')).toBeVisible();
  await expect(silence(page)).toBeHidden();
  await expect(page.getByRole('button', { name: /^Send the answer of/ })).toBeVisible();

  await openToday(page);
  await expect(week(page)).toBeVisible();
  await expect(silence(page)).toBeHidden();
  await press(page, 'Start page');
  await openKeptSessions(page);
  const first = page.getByRole('option').first();
  await expect(first).toContainText('an answer');
  await expect(first).toContainText('9 days without: it hurts');
  await first.click();
  await expect(page.getByRole('region', { name: 'Needs a look' })).toContainText('Ask how much, and where.');
});

test('the question after silent days can be closed, and is not asked again', async ({ page }) => {
  await page.clock.setFixedTime(wednesday);
  await toAcceptedPlan(page);
  await sayDone(page, 1);
  await page.clock.setFixedTime(nextFriday);
  await openToday(page);
  await press(page, 'Rather not say');
  await expect(silence(page)).toBeHidden();
  await openToday(page);
  await expect(week(page)).toBeVisible();
  await expect(silence(page)).toBeHidden();
});
