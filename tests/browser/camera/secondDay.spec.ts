import { readFileSync } from 'node:fs';
import { expect, test, type Browser, type BrowserContext, type Page } from '@playwright/test';
import { notedConditions } from '#documents/plan/notedConditions';
import type { PlanDocument } from '#documents/plan/planDocument';
import { parseRecording } from '#documents/recording/parseRecording';
import { deviceOf } from '#tools/commands/tools/deviceOf';
import { createReading } from '#tools/commands/tools/home/walkDay';
import { acceptPlan, openPlanFile } from '#tools/commands/tools/homePages';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { seriousFaults } from '../../support/browser/accessibilityFaults';
import { openAnew } from '../../support/browser/openAnew';
import { openStoragePage } from '../../support/browser/recordedClock';
import { stageCamera } from '../../support/browser/stageCamera';
import { smallHold, smallItem, smallPlan } from '../../support/smallPlan';
import { smallSession } from '../../support/smallSession';

const mostTaps = 3;
const mostWords = 120;
const viewport = { width: 390, height: 844 };

const opened: BrowserContext[] = [];
test.afterEach(async () => {
  for (const one of opened.splice(0)) await one.close().catch(() => undefined);
});

const button = (page: Page, name: string) => page.getByRole('button', { name, exact: true });
const number = (page: Page, score: number) => page.getByRole('radio', { name: new RegExp(`^${score}\\b`) });
const phase = (page: Page, name: string) => page.locator(`.film[data-phase="${name}"]`);

/** The page as it opens on the day after a first session, which ended before its set. */
async function openNextDay(
  browser: Browser,
  baseURL: string,
  change: Partial<PlanDocument> = {},
): Promise<Page> {
  const storageState = deviceOf('exercises', new URL(baseURL).origin);
  const context = await browser.newContext({ viewport, storageState, permissions: ['camera'] });
  opened.push(context);
  await stageCamera(context);
  const first = await context.newPage();
  await first.goto('./');
  await openPlanFile(first, smallPlan({ items: [smallItem()], ...change }));
  await acceptPlan(first);
  await button(first, 'None of these').click();
  for (const knee of await first.getByRole('radiogroup').all())
    await knee.getByRole('radio', { name: /^1\b/ }).click({ force: true });
  await button(first, 'Continue').click();
  await expect(button(first, 'Switch the camera on')).toBeVisible();
  await first.close({ runBeforeUnload: false });
  const next = await context.newPage();
  await next.goto('./');
  await expect(next.getByRole('heading', { level: 1, name: 'Today' })).toBeVisible();
  return next;
}

/** Puts a session in which something was done on the day before, and opens the page again. */
async function keepYesterday(page: Page): Promise<void> {
  const { id: planId, patient } = smallPlan();
  const startedAt = new Date(Date.now() - 24 * 3_600_000).toISOString();
  const check = { asked: 'all' as const, signs: [], takenBack: [] };
  const session = { ...smallSession(), planId, patient, startedAt, endedAt: startedAt, check };
  const sets = session.sets.map((set) => ({ ...set, sessionId: null }));
  await openStoragePage(page);
  await page.evaluate(
    async (kept) => {
      const { repository } = await window.storagePage.openRepository();
      await repository.sessions.save(kept);
      repository.close();
    },
    { ...session, sets },
  );
  await openAnew(page);
}

test('from the second day on, three taps and few words lead from opening to the set', async ({
  baseURL,
  browser,
}) => {
  // However many exercises there are.
  const hold = smallHold({ sides: ['right'] });
  const items = [smallItem(), hold, smallItem({ sets: 1 })];
  const page = await openNextDay(browser, baseURL!, { items });
  await keepYesterday(page);
  const reading = createReading();
  let taps = 0;
  const tap = async (target: ReturnType<typeof button>) => {
    await expect(target).toBeEnabled();
    const shown = await page.innerText('body');
    reading.add(shown);
    taps++;
    await target.click();
  };
  await tap(number(page, 1));
  // That nothing is new, and how much it hurt in the day after the last session, is one answer.
  await tap(number(page, 2));
  await tap(button(page, 'Begin'));
  // Nobody is asked about the chair again.
  await expect(phase(page, 'placing')).toBeVisible();
  await expect(page.getByText(/Does the chair stand/)).toHaveCount(0);
  expect(taps).toBeLessThanOrEqual(mostTaps);
  expect(reading.words()).toBeLessThanOrEqual(mostWords);
});

test('each of both knees takes one tap more, and keys alone lead the same way', async ({
  baseURL,
  browser,
}) => {
  const page = await openNextDay(browser, baseURL!, { items: [smallItem({ sides: ['left', 'right'] })] });
  const knee = (name: string) => page.getByRole('radiogroup', { name });
  await knee('Left knee').getByRole('radio').first().focus();
  for (const key of ['ArrowRight', 'ArrowRight', 'ArrowRight']) await page.keyboard.press(key);
  // Moving to a number does not choose it.
  await expect(knee('Left knee').getByRole('radio', { checked: true })).toHaveCount(0);
  await page.keyboard.press('Enter');
  await expect(knee('Left knee').getByRole('radio', { name: /^3\b/ })).toBeChecked();
  await knee('Right knee').getByRole('radio', { name: /^2\b/ }).press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Anything new?' })).toBeFocused();
});

test('too much pain leads to the warning, and no further', async ({ baseURL, browser }) => {
  const page = await openNextDay(browser, baseURL!);
  await number(page, 5).click();
  await expect(page.getByText(/It hurts 5 out of 10 now, which is above 4/)).toBeVisible();
  await expect(page.getByRole('button', { name: /told me to go on/ })).toBeHidden();
  await button(page, 'End here for today').click();
  await openAnew(page);
  await number(page, 1).click();
  await expect(page.getByText('It hurt 5 out of 10.')).toBeVisible();
});

test('without permission the button stays, and too little room is said before the walk to the place', async ({
  baseURL,
  browser,
}) => {
  const page = await openNextDay(browser, baseURL!);
  await page.context().clearPermissions();
  await page.evaluate(() => {
    const estimate = () => Promise.resolve({ usage: 1_000_000, quota: 2_000_000 });
    // What is kept lies in a bucket of its own where the browser has them.
    const { StorageBucket } = window as { StorageBucket?: { prototype: object } };
    for (const place of [StorageBucket?.prototype, StorageManager.prototype])
      if (place !== undefined) Object.assign(place, { estimate });
  });
  await number(page, 1).click();
  await button(page, 'Nothing new').click();
  await expect(button(page, 'Switch the camera on')).toBeVisible();
  await expect(page.getByText(/videos may not fit.*still count and are measured/)).toBeVisible();
});

test('the pages of the second day have no serious faults for a screen reader, and fit a phone', async ({
  baseURL,
  browser,
}) => {
  const page = await openNextDay(browser, baseURL!, {
    items: [smallItem({ sides: ['left', 'right'] }), smallHold()],
  });
  const look = async () => {
    expect(await seriousFaults(page)).toEqual([]);
    const size = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.scrollHeight,
    ]);
    expect(size).toEqual([viewport.width, viewport.height]);
  };
  await look();
  for (const name of ['Left knee', 'Right knee'])
    await page.getByRole('radiogroup', { name }).getByRole('radio', { name: /^1\b/ }).click();
  await expect(button(page, 'Nothing new')).toBeVisible();
  await look();
  await button(page, 'Nothing new').click();
  await expect(button(page, 'Begin')).toBeEnabled();
  await look();
});

/** Three sessions in which all went well, the last of them two days ago, and opens the page again. */
async function keepThreeGood(page: Page, plan: PlanDocument): Promise<void> {
  const example = parseRecording(readFileSync(`${projectRoot}fixtures/example.session.json`, 'utf8'));
  // The same knee in each repetition, far within the limits.
  const repetitions = example.derived.repetitions.map((repetition) => {
    const { max, ...knee } = repetition.ranges['knee-angle'];
    const ranges = { ...repetition.ranges, 'knee-angle': { ...knee, max: max && { ...max, value: 3 } } };
    return { ...repetition, ranges };
  });
  const limits = { ...example.limits, 'knee-angle': { least: -30, most: 30 } };
  const idOf = (letter: string, day: number) => `${letter}b0c3c52-6d2e-4c57-9a5b-0f6f1f0e9d1${day}`;
  const kept = [8, 5, 2].map((daysAgo, index, all) => {
    const startedAt = new Date(Date.now() - daysAgo * 24 * 3_600_000).toISOString();
    const before = all[index - 1];
    const recording = {
      ...example,
      id: idOf('7', daysAgo),
      createdAt: startedAt,
      limits,
      derived: { ...example.derived, repetitions },
    };
    const session = {
      ...smallSession(),
      ...{ id: idOf('3', daysAgo), startedAt, endedAt: startedAt },
      ...{ planId: plan.id, patient: plan.patient, painBefore: 1, painAfter: 1 },
      check: { asked: 'new' as const, signs: [], takenBack: [] },
      afterLast:
        before === undefined ? null : { visitId: idOf('3', before), worst: 1, swelling: 'same' as const },
      sets: [
        {
          ...smallSession().sets[0]!,
          ...{ sessionId: recording.id, prescribedRepetitions: 6, painDuring: 1, cutShort: null },
          conditions: notedConditions(plan.items[0]!, plan),
        },
      ],
    };
    return { recording, session };
  });
  await openStoragePage(page);
  await page.evaluate(async (sessions) => {
    const { repository } = await window.storagePage.openRepository();
    for (const { recording, session } of sessions) {
      await repository.sessions.save(session);
      await repository.recordings.save(recording, {
        visitId: session.id,
        video: null,
        fromVideo: 'impossible',
      });
    }
    repository.close();
  }, kept);
  await openAnew(page);
}

test('where the plan allows it, a set has two more after three good sessions, and says so', async ({
  baseURL,
  browser,
}) => {
  const item = smallItem({ sets: 1, repetitions: 6, upTo: { min: 20, max: 25 } });
  const change = { items: [item], autoStep: 'within-plan' as const };
  const page = await openNextDay(browser, baseURL!, change);
  await keepThreeGood(page, smallPlan(change));
  await expect(page.getByLabel('Your plan')).toContainText('6 times');
  await number(page, 1).click();
  await number(page, 1).click();
  await expect(
    page.getByText('Split-stance sit-to-stand: today 8 times instead of 6. The last times went well.'),
  ).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);
});
