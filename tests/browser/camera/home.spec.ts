import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { chromium, expect, test, type Browser, type BrowserContext, type Page } from '@playwright/test';
import { parseRecording } from '#documents/recording/parseRecording';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { actAsPatient } from '#tools/commands/tools/home/actAsPatient';
import type { Filmed } from '#tools/commands/tools/home/patient';
import { acceptPlan, goHome, openPlanFile } from '#tools/commands/tools/homePages';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import { serveBuild } from '#tools/commands/tools/serveBuild';
import { copyWithSmallNetwork } from '../../support/browser/copyWithSmallNetwork';
import { launchWithCamera } from '../../support/browser/filmedBrowser';
import { fixture } from '../../support/browser/headlessPage';
import { filmSitToStands, numberedCameraFile } from '../../support/browser/numberedFilm';
import { openAnew } from '../../support/browser/openAnew';
import { openSentFile } from '../../support/browser/openSentFile';
import { refuseStorage } from '../../support/browser/refuseStorage';
import { stageCamera } from '../../support/browser/stageCamera';
import { writePlan } from '../../support/browser/writePlan';
import { smallItem, smallPlan } from '../../support/smallPlan';

/** Other programs may take the processor meanwhile, ms. */
const longMs = 120_000;
const wayOut = 'Or record with the device’s own camera app and open the file here.';
/** No more of a set may be lost with its tab, s. */
const mostLostS = 2;

const viewport = { width: 390, height: 844 };
const plan = smallPlan({ items: [smallItem({ sets: 1, repetitions: 2, feedback: 'every-repetition' })] });

const opened: (Browser | BrowserContext)[] = [];
test.beforeEach(() => test.setTimeout(400_000));
test.afterEach(async () => {
  for (const one of opened.splice(0)) await one.close().catch(() => undefined);
});

const shortFilmMs = 12_000;
/** Two sit-to-stands on the right leg by an invented person, who sits before and after them. */
function shortFilm(): Filmed {
  const base64 = readFileSync(fixture('short.mp4')).toString('base64');
  const size = { widthPx: 540, heightPx: 960, rateHz: 30 };
  const seated = { standingS: 0, seatedAgainS: 0, beforeFirstS: 0 };
  return { url: `data:video/mp4;base64,${base64}`, ...size, ...seated, laterMs: 0 };
}

/** A page before a staged camera, whose joints are known: the network is not what is tested. */
async function openStaged(browser: Browser, baseURL: string): Promise<Page> {
  const context = await browser.newContext({ baseURL, viewport });
  opened.push(context);
  await stageCamera(context);
  return context.newPage();
}

const press = (page: Page, name: string) => page.getByRole('button', { name }).click();
/** The label lies over the button that it belongs to. */
const choose = (page: Page, score: number) =>
  page.getByRole('radio', { name: new RegExp(`^${score}\\b`) }).check({ force: true });
const phase = (page: Page, name: string) => page.locator(`.film[data-phase="${name}"]`);
const counted = (page: Page, count: number) => page.getByRole('img', { name: `${count} of 2 repetitions` });

/** The plan's file, from the start of the program. */
async function openPlan(page: Page): Promise<void> {
  await openAnew(page);
  await openPlanFile(page, plan);
}

/** From the plan to the page that asks for the camera. */
async function toCamera(page: Page, open = openPlan): Promise<void> {
  await open(page);
  await acceptPlan(page);
  await press(page, 'None of these');
  await choose(page, 1);
  await press(page, 'Continue');
  await expect(page.getByText(/no sound is recorded/)).toBeVisible();
}

async function toWorking(page: Page, open = openPlan): Promise<void> {
  await toCamera(page, open);
  await press(page, 'Switch the camera on');
  await press(page, 'Begin');
  await press(page, 'Yes, it stands firm'); // The last touch before the set is over.
  await expect(phase(page, 'standing')).toBeVisible({ timeout: longMs });
  await expect(phase(page, 'working')).toBeVisible({ timeout: longMs });
}

/**
 * When the last quiet stand began, with which a recording begins. Where the film's person stands up in it, which they do
 * on a slow machine, they are sent back, and a new one begins: nothing of a set was recorded by then.
 */
async function watchStanding(page: Page): Promise<() => Promise<number>> {
  await page.evaluate(() => {
    let before: string | undefined;
    setInterval(() => {
      const phase = document.querySelector<HTMLElement>('.film')?.dataset['phase'];
      if (phase === 'standing' && before !== phase) Object.assign(window, { standsFromMs: Date.now() });
      before = phase;
    }, 50);
  });
  return () => page.evaluate(() => (window as unknown as { standsFromMs: number }).standsFromMs);
}

async function answerAndSave(page: Page): Promise<void> {
  for (const score of [2, 1, 5]) {
    await choose(page, score);
    await press(page, 'Continue');
  }
  await page.getByRole('textbox').fill('It went well.');
  await press(page, 'Save');
}

/** What the document of the shown recording holds: its repetitions, and that they come after 'go'. */
async function savedRepetitions(page: Page): Promise<string[]> {
  const download = page.waitForEvent('download');
  await press(page, 'Save recording');
  const { setup, derived } = parseRecording(readFileSync(await (await download).path(), 'utf8'));
  expect(setup.goMs).toBeGreaterThan(0);
  return derived.repetitions.map(({ completeness }) => completeness);
}

/** The therapist opens what was sent, and finds the set with its numbers. */
async function openSent(page: Page, sealed: { name: string; buffer: Buffer }): Promise<void> {
  await openSentFile(page, sealed);
  await expect(page.getByRole('log')).toContainText(/Grey Otter 3, .*: kept/);
  await expect(page.getByRole('region', { name: 'How it felt' })).toContainText('Pain limit3');
  const set = page.getByRole('grid', { name: 'Sets' }).getByRole('row').first();
  await expect(set).toContainText('2 of 2 repetitions');
  await set.click();
}

const peaks = (page: Page) =>
  page.getByRole('grid', { name: 'Repetitions' }).getByRole('row').allInnerTexts();

/** A patient's and a therapist's device, from the plan to the session that came back. */
async function goAllTheWay(clinic: Page, page: Page): Promise<void> {
  const link = await writePlan(clinic, 2);
  await toWorking(page, async (patient) => void (await patient.goto(link)));
  const countYourself = page.getByText('Count to 2');
  await expect(counted(page, 2).or(countYourself)).toBeVisible({ timeout: longMs });
  if (await countYourself.isVisible()) {
    // Where other programs take the processor, the device is too slow to count along.
    await page.waitForTimeout(shortFilmMs);
    await press(page, 'End this set');
  }
  await expect(phase(page, 'all-done')).toBeVisible({ timeout: longMs });
  await press(page, 'Say how it was');
  await answerAndSave(page);
  const measuring = page.getByRole('progressbar', { name: /being measured carefully/ });
  await expect(measuring).toBeVisible();
  await expect(page.getByText('Done well')).toBeHidden();
  await expect(measuring).toBeHidden({ timeout: 2 * longMs });
  await expect(page.getByText('Done well')).toBeVisible();
  await expect(page.getByText('may be less exact')).toBeHidden();
  await expect(page.getByText('2 of 2 done')).toBeVisible();

  await press(page, 'Send to your therapist');
  const whole = page.getByRole('radio', { name: /^The whole video/ });
  await expect(whole).toBeEnabled();
  await whole.check({ force: true });
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Send', exact: true }).click();
  const sent = await download;
  const buffer = readFileSync(await sent.path());
  expect(buffer.includes('Grey Otter')).toBe(false);
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await openKeptSessions(page);
  await page.getByRole('option').first().click();
  await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().click();
  const rows = page.getByRole('grid', { name: 'Repetitions' }).getByRole('rowheader');
  await expect(rows).toHaveCount(2);
  const video = page.getByLabel('The measured video');
  await expect.poll(() => video.evaluate((shown: HTMLVideoElement) => shown.videoWidth)).toBe(540);
  expect(await savedRepetitions(page)).toEqual(['complete', 'complete']);
  const found = await peaks(page);

  await openSent(clinic, { name: sent.suggestedFilename(), buffer });
  await expect(clinic.getByRole('grid', { name: 'Repetitions' }).getByRole('rowheader')).toHaveCount(2);
  await clinic.setViewportSize(viewport); // Then the table has the same columns.
  await expect.poll(() => peaks(clinic)).toEqual(found);
  await expect(clinic.getByLabel('The measured video')).toBeVisible();
}

// The server is closed after the first visit, since none of this may need it.
test(
  'a patient goes from the therapist’s link to the summary, and the sealed session returns with the same numbers',
  { tag: '@network' },
  async ({ browser }) => {
    const folder = copyWithSmallNetwork();
    const server = await serveBuild(folder);
    const context = await browser.newContext({ baseURL: server.url, serviceWorkers: 'allow' });
    opened.push(context);
    const clinic = await context.newPage();
    await clinic.goto('./');
    const device = await browser.newContext({
      baseURL: server.url,
      viewport,
      permissions: ['camera'],
      serviceWorkers: 'allow',
    });
    opened.push(device);
    await actAsPatient(device, shortFilm());
    const patient = await device.newPage();
    for (const page of [clinic, patient]) {
      await page.goto('./');
      await expect(page.getByText('opens without one')).toBeVisible({ timeout: longMs });
    }
    await server.close();
    rmSync(folder, { recursive: true });
    await goAllTheWay(clinic, patient);
  },
);

test('a camera that stops during a set loses nothing, and a killed tab at most two seconds', async ({
  baseURL,
  browser,
}) => {
  const page = await openStaged(browser, baseURL!);
  await toWorking(page);
  await expect(counted(page, 1)).toBeVisible({ timeout: longMs });
  await page.evaluate(() => window.stage.unplug());
  await expect(phase(page, 'paused')).toBeVisible();
  await expect(page.getByText(/^The camera has stopped: it was unplugged/)).toBeVisible();
  await expect(page.getByText('1 of 2 done.')).toBeVisible();

  await press(page, 'Switch the camera on');
  const standsFromMs = await watchStanding(page);
  await press(page, 'Continue');
  await expect(phase(page, 'working')).toBeVisible({ timeout: longMs });
  const recordedFromMs = await standsFromMs();
  await page.waitForTimeout(2000);
  const recordedS = (Date.now() - recordedFromMs) / 1000;
  await page.close({ runBeforeUnload: false });

  const next = await page.context().newPage();
  await next.goto('./');
  await goHome(next);
  await expect(next.getByText('A set was interrupted')).toBeVisible();
  const offer = await next.getByText(/\d+ seconds were saved/).innerText();
  const keptS = Number(/(\d+) seconds were/.exec(offer)![1]);
  process.stdout.write(`    of ${recordedS.toFixed(1)} s recorded, ${keptS} s were saved\n`);
  // The offer shows whole seconds.
  expect(recordedS - keptS).toBeLessThan(mostLostS + 0.5);
  await expect(next.getByText('You stopped in the middle today')).toBeVisible();
  await press(next, 'More');
  await press(next, 'Keep it');
  // With known joints it is soon over; the set before may be done by now.
  await expect(next.getByText(/(a set|2 sets) again, more carefully/)).toBeVisible();
  await expect(next.getByText('A set was interrupted')).toBeHidden();

  await press(next, 'Start page');
  await openKeptSessions(next);
  await next.getByRole('option', { name: /2 sets/ }).click();
  const sets = next.getByRole('grid', { name: 'Sets' }).getByRole('row');
  await expect(sets).toHaveCount(2);
  await expect(sets.first()).toContainText('1 of 2 repetitions');
  await expect(sets.first()).toContainText('the camera stopped');
  await expect(sets.last()).toContainText('the page was closed');
});

test('a refused camera is explained, with every way out', async ({ baseURL }) => {
  const film = filmSitToStands([2]);
  const browser = await launchWithCamera(numberedCameraFile(film, 1));
  opened.push(browser);
  const context = await browser.newContext({ baseURL: baseURL!, viewport, serviceWorkers: 'block' });
  await replayJoints(context, film);
  const page = await context.newPage();
  await toCamera(page);
  await press(page, 'Switch the camera on');
  const problem = page.getByText(/The camera was not allowed\./);
  await expect(problem).toBeVisible();
  await expect(problem).toContainText(wayOut);
  await expect(page.getByRole('button', { name: 'Open a recorded video' })).toBeVisible();
  await page.context().grantPermissions(['camera']);
  await press(page, 'Try again');
  await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
});

test('where the browser refuses to store anything, the screen says so and work continues', async ({
  baseURL,
}) => {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-profile-'));
  refuseStorage(folder);
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: findBrowser(),
    args: browserSwitches,
    baseURL: baseURL!,
    viewport,
  });
  opened.push(context);
  try {
    const page = context.pages()[0] ?? (await context.newPage());
    await page.goto('./');
    await goHome(page);
    await expect(page.getByText('What you record will be lost when this tab is closed')).toBeVisible();
    await expect(page.getByText(/refuses to keep anything/)).toBeVisible();
    await toCamera(page);
    await context.close();
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});
