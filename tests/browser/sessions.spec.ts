import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { chromium, expect, test, type Page } from '@playwright/test';
import { verdicts } from '#core/scoring/verdict';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { verdictWords } from '#words/verdictWords';
import { refuseStorage } from '../support/browser/refuseStorage';
import { countKept, demoSessions, saveSessions } from '../support/browser/saveSessions';

/** Longer than a deletion can be taken back, ms. */
const undoneByMs = 10_500;

test.use({ timezoneId: 'UTC', viewport: { width: 1440, height: 900 } });

async function openSessionsScreen(page: Page) {
  await page.goto('./');
  await openKeptSessions(page);
}

const list = (page: Page) => page.getByRole('listbox', { name: 'Kept sessions by patient' });
const sessions = (page: Page) => list(page).getByRole('option');
const sets = (page: Page) => page.getByRole('grid', { name: 'Sets' }).getByRole('row');

test('a new device keeps nothing, and the list of kept sessions says so', async ({ page }) => {
  await openSessionsScreen(page);
  await expect(page.getByText('Nothing is kept on this device yet')).toBeVisible();
  await page.getByRole('button', { name: 'Back to the start' }).click();
  await expect(page.getByRole('heading', { name: 'See an example' })).toBeVisible();
});

test('sessions are listed by patient, newest first, each with what needs a look', async ({ page }) => {
  await saveSessions(page, demoSessions('waiting'));
  await openSessionsScreen(page);
  await expect(list(page).getByRole('group')).toHaveCount(3);
  expect(await list(page).getByRole('group').locator('header').allInnerTexts()).toEqual([
    'Blue Heron 7',
    'Quiet Otter 3',
    'No patient named',
  ]);
  const [newest, older, other, alone] = [0, 1, 2, 3].map((index) => sessions(page).nth(index));
  await expect(newest!).toContainText('Sun 5 Apr 2026, 06:07');
  for (const need of [
    'pain 5, limit 3',
    'pain rose 1 to 5',
    'a set cut short',
    /\d of \d+ out of line/,
    '3 of 5 sets done',
    'not yet measured carefully',
  ]) {
    await expect(newest!).toContainText(need);
  }
  await expect(older!).toContainText('1 of 5 sets done');
  await expect(older!).not.toContainText('cut short');
  await expect(other!).toContainText('4 of 6 not measured');
  await expect(alone!).toContainText('Wed 1 Apr 2026');
});

test('the keyboard alone leads through sessions and sets into the review with its video, and back', async ({
  page,
}) => {
  await saveSessions(page, demoSessions());
  await openSessionsScreen(page);
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Blue Heron 7');
  await expect(sessions(page).first()).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Quiet Otter 3');
  await expect(page.getByText('4 of 6 repetitions could not be measured: turned too far')).toBeVisible();
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Blue Heron 7');

  await expect(sets(page)).toHaveCount(3);
  await expect(sets(page).nth(1)).toContainText('6 of 8 repetitions');
  await expect(sets(page).nth(1)).toContainText('Cut short: Pain above the limit.');
  await expect(sets(page).nth(1)).toContainText(/In line: \d( to \d)? of 6/);
  await expect(sets(page).first()).toContainText(/on Fri 3 Apr 2026: no change beyond measurement error/);
  await expect(
    sets(page)
      .nth(1)
      .getByRole('img', { name: /^6 repetitions: .*out of line/ }),
  ).toBeVisible();
  await expect(sets(page).nth(2)).toContainText('90 s held');
  await expect(page.getByRole('region', { name: 'How it felt' })).toContainText('Most pain during');

  await page.keyboard.press('Tab');
  await page.keyboard.press('Tab');
  await expect(sets(page).first()).toBeFocused();
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('grid', { name: 'Repetitions' })).toBeVisible();
  await expect(
    page.getByRole('heading', { name: /^Blue Heron 7, Sun 5 Apr 2026, 06:07: Split-stance/ }),
  ).toBeVisible();
  await expect
    .poll(() => page.getByLabel('The measured video').evaluate((video: HTMLVideoElement) => video.videoWidth))
    .toBe(540);
  await page.getByRole('button', { name: 'Back to kept sessions' }).click();
  await expect(page.getByRole('heading', { level: 2 })).toHaveText('Blue Heron 7');
});

test('what the list says of a set agrees with its review', async ({ page }) => {
  await saveSessions(page, demoSessions().slice(0, 1));
  await openSessionsScreen(page);
  const label = await sets(page).first().getByRole('img').getAttribute('aria-label');
  await sets(page).first().click();
  const rows = page.getByRole('grid', { name: 'Repetitions' }).getByRole('rowheader');
  await expect(rows).toHaveCount(6);
  const shown = await rows.allInnerTexts();
  for (const verdict of verdicts.map(verdictWords)) {
    const count = shown.filter((text) => text.startsWith(verdict)).length;
    if (count > 0) expect(label).toContain(`${count} ${verdict}`);
    else expect(label).not.toMatch(new RegExp(`\\d ${verdict}`));
  }
});

test('a session is deleted for good, videos included, after a question and time to undo it', async ({
  page,
}) => {
  await page.clock.install();
  await saveSessions(page, demoSessions());
  expect(await countKept(page)).toEqual({ sessions: 3, recordings: 5, videos: 2 });
  await openSessionsScreen(page);
  const ask = async (answer: string) => {
    await page.getByRole('button', { name: 'Delete …' }).click();
    await expect(page.getByRole('alertdialog')).toContainText(
      'and the videos will be deleted from this device',
    );
    await page.getByRole('button', { name: answer, exact: true }).click();
  };
  await ask('Keep it');
  await expect(sessions(page)).toHaveCount(4);
  await ask('Delete');
  await expect(sessions(page)).toHaveCount(3);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(sessions(page)).toHaveCount(4);
  await sessions(page).first().click();
  await ask('Delete');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeVisible();
  await page.clock.fastForward(undoneByMs);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeHidden();
  await expect(sessions(page)).toHaveCount(3);
  expect(await countKept(page)).toEqual({ sessions: 2, recordings: 3, videos: 0 });
});

test('everything of a patient is deleted at once, and nothing of another', async ({ page }) => {
  await page.clock.install();
  await saveSessions(page, demoSessions());
  await openSessionsScreen(page);
  await page.getByRole('button', { name: 'Delete this patient …' }).click();
  await expect(page.getByRole('alertdialog')).toContainText('Delete all records of Blue Heron 7?');
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await expect(page.getByText('All records of Blue Heron 7 will be deleted for good')).toBeVisible();
  await expect(sessions(page)).toHaveCount(2);
  await page.clock.fastForward(undoneByMs);
  await expect(page.getByRole('button', { name: 'Undo' })).toBeHidden();
  await expect(page.getByText('Blue Heron 7')).toHaveCount(0);
  expect(await countKept(page)).toEqual({ sessions: 1, recordings: 2, videos: 0 });
});

test('what was deleted is gone the next time, even if the page was left at once', async ({ page }) => {
  await page.clock.install();
  await saveSessions(page, demoSessions().slice(0, 2));
  await openSessionsScreen(page);
  await page.getByRole('button', { name: 'Delete …' }).click();
  await page.getByRole('button', { name: 'Delete', exact: true }).click();
  await page.goto('about:blank');
  await page.clock.fastForward(undoneByMs);
  await openSessionsScreen(page);
  await expect(page.getByText('Nothing is kept on this device yet')).toBeVisible();
  expect(await countKept(page)).toEqual({ sessions: 0, recordings: 0, videos: 0 });
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('list and session are shown one at a time, and nothing is cut off', async ({ page }) => {
    await saveSessions(page, demoSessions());
    await openSessionsScreen(page);
    await expect(sets(page)).toHaveCount(0);
    const fits = () =>
      page.evaluate(() => document.documentElement.scrollWidth <= document.documentElement.clientWidth);
    expect(await fits()).toBe(true);
    await sessions(page).first().tap();
    await expect(sets(page)).toHaveCount(3);
    expect(await fits()).toBe(true);
    await page.getByRole('button', { name: 'All sessions' }).tap();
    await expect(sessions(page)).toHaveCount(4);
  });
});

test('where the browser’s settings refuse storage, the kept sessions say so', async ({ baseURL }) => {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-profile-'));
  refuseStorage(folder);
  const context = await chromium.launchPersistentContext(folder, {
    executablePath: findBrowser(),
    args: browserSwitches,
    baseURL: baseURL!,
  });
  try {
    const page = context.pages()[0]!;
    await openSessionsScreen(page);
    await expect(page.getByText(/Nothing is kept after this tab is closed/)).toBeVisible();
    await expect(page.getByText(/Allow site data/)).toBeVisible();
  } finally {
    await context.close();
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});

test('a backup of everything restores the same state on another device', async ({
  page,
  browser,
  baseURL,
}) => {
  const passphrase = 'otter river stone lamp';
  await saveSessions(page, demoSessions());
  await openSessionsScreen(page);
  await page.getByRole('button', { name: 'Backup', exact: true }).click();
  await page.getByLabel('Passphrase of the backup').fill(passphrase);
  await page.getByLabel('Once more, to save a backup').fill(passphrase);
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save a backup of everything' }).click();
  const download = await coming;
  expect(download.suggestedFilename()).toMatch(/^overfoot-backup-\d{4}-\d\d-\d\d\.age$/);
  // A patient's record is made when their sessions are first listed, one after the other.
  await expect(
    page.getByText(/^Saved: [12] patients?, 3 sessions, 5 sets, 2 videos, 1 plan\.$/),
  ).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);

  const context = await browser.newContext({ baseURL: baseURL!, serviceWorkers: 'block' });
  const other = await context.newPage();
  await openSessionsScreen(other);
  await other.getByRole('button', { name: 'Backup', exact: true }).click();
  await other.getByLabel('Passphrase of the backup').fill(passphrase);
  const choosing = other.waitForEvent('filechooser');
  await other.getByRole('button', { name: 'Open a backup' }).click();
  await (await choosing).setFiles(await download.path());
  // Opening derives a key from the passphrase, which takes long by design.
  await expect(other.getByText(/It was checked in full, and nothing has been written yet/)).toBeVisible({
    timeout: 30_000,
  });
  expect((await new AxeBuilder({ page: other }).analyze()).violations).toEqual([]);
  await other.getByRole('button', { name: 'Restore what is missing' }).click();
  await expect(other.getByText('Restored.')).toBeVisible();
  await other.getByRole('button', { name: 'Close' }).click();
  await expect(sessions(other)).toHaveCount(4);
  expect(await sessions(other).allInnerTexts()).toEqual(await sessions(page).allInnerTexts());
  await sessions(other).first().click();
  await sets(other).first().click();
  await expect
    .poll(() =>
      other.getByLabel('The measured video').evaluate((video: HTMLVideoElement) => video.videoWidth),
    )
    .toBe(540);
  await context.close();
});

test('storage shows the size of old videos, and deletes them while results stay', async ({ page }) => {
  await saveSessions(page, demoSessions());
  await openSessionsScreen(page);
  await page.getByRole('button', { name: 'Storage' }).click();
  const deleting = page.getByRole('button', { name: /^Delete old videos, \d/ });
  await expect(deleting).toBeEnabled(); // The sets are of April 2026.
  await page.getByLabel('Delete videos older than (weeks)').fill('520');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('button', { name: 'No videos older than 520 weeks' })).toBeDisabled();
  await page.getByLabel('Delete videos older than (weeks)').fill('1');
  await page.keyboard.press('Tab');
  await deleting.click();
  await expect(page.getByText(/\d.* of videos deleted/)).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(sets(page)).toHaveCount(3);
  expect(await countKept(page)).toEqual({ sessions: 3, recordings: 5, videos: 0 });
});

test('dropped files are opened one after another, each with its outcome', async ({ page }) => {
  await openSessionsScreen(page);
  await page.evaluate(() => {
    const data = new DataTransfer();
    for (const name of ['one.age', 'two.age']) data.items.add(new File(['no seal'], name));
    window.dispatchEvent(new DragEvent('dragover', { dataTransfer: data, cancelable: true }));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
  });
  const log = page.getByRole('log').getByRole('listitem');
  await expect(log).toHaveCount(2);
  for (const [index, name] of ['one.age', 'two.age'].entries())
    await expect(log.nth(index)).toContainText(`${name}: refused. It is not a sent session`);
});

test('a session document dropped into the list of patients is kept there, and what is none is refused', async ({
  page,
}) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Patients', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Open sent sessions' })).toBeVisible();
  const { session } = demoSessions()[0]!;
  const files = [
    ['session.json', JSON.stringify({ ...session, patient: 'Invented Teal 5', planId: null })],
    ['plan.json', JSON.stringify({ format: 'overfoot-plan' })],
  ];
  await page.evaluate((files) => {
    const data = new DataTransfer();
    for (const [name, text] of files) data.items.add(new File([text!], name!));
    window.dispatchEvent(new DragEvent('dragover', { dataTransfer: data, cancelable: true }));
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: data, cancelable: true }));
  }, files);
  const log = page.getByRole('log').getByRole('listitem');
  await expect(log.nth(0)).toContainText('Invented Teal 5, ');
  await expect(log.nth(0)).toContainText('not kept yet. It follows no plan that was written on this device.');
  await expect(log.nth(1)).toContainText('plan.json: refused. It is a plan, not a session.');
  await page.getByRole('button', { name: 'Keep it all the same' }).click();
  await expect(log.nth(0)).toContainText(': kept');
  await page
    .getByRole('list', { name: 'Patients' })
    .getByRole('button', { name: /Invented Teal 5/ })
    .click();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Invented Teal 5');
  await page.getByRole('button', { name: /^\w+ \d+ Apr 2026, .*new/ }).click();
  await expect(sets(page)).toHaveCount(session!.sets.length);
});
