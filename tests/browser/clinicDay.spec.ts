import { expect, test, type Page } from '@playwright/test';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { seriousFaults } from '../support/browser/accessibilityFaults';
import { clinicSessions, clinicSets, repetitionsEach, turningMs } from '../support/browser/clinicDay';
import { readPrint } from '../support/browser/readPrint';
import { saveSessions } from '../support/browser/saveSessions';

// One clinic day for all tests: each test continues where the one before left it.
test.describe.configure({ mode: 'serial' });

let page: Page;
test.beforeAll(async ({ browser, baseURL }) => {
  test.setTimeout(240_000); // Twelve recordings of 75 repetitions are filmed, measured and saved, while other tests run.
  const context = await browser.newContext({
    baseURL: baseURL!,
    timezoneId: 'UTC',
    viewport: { width: 1440, height: 900 },
    serviceWorkers: 'block',
    bypassCSP: true,
  });
  page = await context.newPage();
  for (const sets of clinicSets()) await saveSessions(page, sets);
  await page.goto('./');
});
test.afterAll(() => page.context().close());

const sessions = () => page.getByRole('listbox', { name: 'Kept sessions by patient' }).getByRole('option');
const sets = () => page.getByRole('grid', { name: 'Sets' }).getByRole('row');
const table = () => page.getByRole('grid', { name: 'Repetitions' });
/** Those in the document: in sight, or near it. */
const rows = () =>
  table()
    .getByRole('row')
    .filter({ has: page.getByRole('gridcell') });
/** The row at a place of the whole table, counted from 1. */
const rowAt = (place: number) => table().locator(`[aria-rowindex="${place + 1}"]`);
const selectedRow = () => table().getByRole('row', { selected: true });
const counts = () => page.getByRole('region', { name: 'Repetitions', exact: true }).getByRole('listitem');
const numbers = async () => (await rows().getByRole('gridcell').evaluateAll(firstCells)).map(Number);
const expectRows = (count: number) => expect(table()).toHaveAttribute('aria-rowcount', `${count + 1}`);
/** Rows that may stand in the document at once, of 75. */
const mostDrawn = 30;
const limits = () => page.getByRole('region', { name: 'Limits', exact: true });
const glance = () => page.getByRole('region', { name: 'The set at a glance' });

/** The first cell of each row. */
function firstCells(cells: Element[]): string[] {
  return cells.filter((cell) => cell.previousElementSibling === null).map((cell) => cell.textContent ?? '');
}

async function expectNoSeriousFault() {
  expect(await seriousFaults(page)).toEqual([]);
}

async function openSet(day: string, side = 'right') {
  await sessions().filter({ hasText: day }).first().click();
  await sets().filter({ hasText: side }).click();
  await expectRows(repetitionsEach);
}

/** Selects a repetition by its mark below the plot, which brings its row into sight. */
async function selectRepetition(number: number) {
  await page.getByRole('button', { name: new RegExp(`^Repetition ${number}:`) }).click();
  await expect(selectedRow().getByRole('gridcell').first()).toHaveText(`${number}`);
}

async function backToList() {
  await page.getByRole('button', { name: 'Back to kept sessions' }).click();
  await expect(sessions().first()).toBeVisible();
}

test('twelve sessions of 75 repetitions are listed, each with why it needs a look', async () => {
  await openKeptSessions(page);
  await expect(sessions()).toHaveCount(clinicSessions.length);
  // The last one read is the oldest.
  await expect(sessions().filter({ hasText: '13 Mar 2026' })).toContainText('nothing stands out');
  for (const { exercises, flags } of clinicSessions) {
    const [, month, day] = `-${exercises[0]!.day}`.split('-');
    const name = `${Number(day)} ${month === '04' ? 'Apr' : 'Mar'} 2026`;
    const session = sessions().filter({ hasText: name });
    if (flags.length === 0) await expect(session).toContainText('nothing stands out');
    else await expect(session).not.toContainText('nothing stands out');
    for (const flag of flags) await expect(session).toContainText(flag);
  }
  await expectNoSeriousFault();
});

test('the table of 75 rows works by keyboard, and can be sorted and filtered', async () => {
  await openSet('20 Apr 2026');
  await expect(page.getByLabel('The measured video')).toBeVisible();
  await expect(glance()).toContainText(`${repetitionsEach} of ${repetitionsEach}`);
  await expect(glance()).toContainText('The left leg');
  await selectRepetition(1);
  await selectedRow().focus();
  for (let press = 0; press < 12; press++) await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('region', { name: 'Repetition 13' })).toBeVisible();
  await expect(rowAt(13)).toBeInViewport();
  await page.keyboard.press('ArrowUp');
  await expect(rowAt(12)).toHaveAttribute('aria-selected', 'true');
  await page.keyboard.press('End');
  await expect(page.getByRole('region', { name: `Repetition ${repetitionsEach}` })).toBeVisible();
  await page.keyboard.press('Home');
  await expect(rowAt(1)).toBeFocused();

  const peaks = page.getByRole('columnheader', { name: 'Peak angle' });
  await peaks.getByRole('button').focus();
  await page.keyboard.press('Enter');
  await expect(peaks).toHaveAttribute('aria-sort', 'ascending');
  await page.keyboard.press('Enter');
  await expect(peaks).toHaveAttribute('aria-sort', 'descending');
  // Every fifth of all is bad: these stand first now, and the first of all, which is selected, among them.
  await page.keyboard.press('Home');
  await expect(rowAt(1)).toBeFocused();
  expect((await numbers()).slice(0, 15).map((one) => one % 5)).toEqual(Array(15).fill(1));
  await page.getByRole('columnheader', { name: '#' }).click();
  await page.keyboard.press('Home');
  await expect.poll(async () => (await numbers())[0]).toBe(1);
  await page.getByRole('button', { name: /^All/ }).first().click();
  await page.getByRole('option', { name: 'Out of line', exact: true }).click();
  await expect(rows()).toHaveCount(15);
  await rows().first().focus();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('region', { name: 'Repetition 6' })).toBeVisible();
  await page.getByRole('button', { name: /^Out of line/ }).click();
  await page.getByRole('option', { name: 'All', exact: true }).click();
  await expectRows(repetitionsEach);
  await expectNoSeriousFault();
});

test('of 75 rows only those in view are rendered, keys reach all of them, and all are printed', async () => {
  await selectRepetition(1);
  await selectedRow().focus();
  for (let place = 1; place <= repetitionsEach; place++) {
    await expect(rowAt(place)).toBeFocused();
    await expect(rowAt(place)).toBeInViewport({ ratio: 0.9 });
    await expect(rowAt(place).getByRole('gridcell').first()).toHaveText(`${place}`);
    expect(await rows().count()).toBeLessThan(mostDrawn);
    if (place < repetitionsEach) await page.keyboard.press('ArrowDown');
  }
  await page.keyboard.press('Home');
  await expect(rowAt(1)).toBeFocused();
  await expect(rowAt(repetitionsEach)).toHaveCount(0);
  await page.keyboard.press('End');
  await expect(rowAt(repetitionsEach)).toBeFocused();
  await expect(rowAt(repetitionsEach)).toBeInViewport({ ratio: 0.9 });

  // Out of sight, the selected row stays, and the focus with it.
  await table()
    .locator('..')
    .evaluate((box) => (box.scrollTop = 0));
  await expect(rowAt(1)).toBeInViewport({ ratio: 0.9 });
  await expect(rowAt(repetitionsEach)).toBeFocused();
  await page.keyboard.press('ArrowUp');
  await expect(rowAt(repetitionsEach - 1)).toBeInViewport({ ratio: 0.9 });

  const print = readPrint(await page.pdf({ format: 'A4' }));
  const printed = new Set(print.marks.map(({ text }) => text.trim()));
  const times = await printedTimes();
  expect(times).toHaveLength(repetitionsEach);
  expect(times.filter((time) => !printed.has(time))).toEqual([]);
  await expect.poll(() => rows().count()).toBeLessThan(mostDrawn);
});

/** What the second column of each row says, read one row after the other. */
async function printedTimes(): Promise<string[]> {
  const times: string[] = [];
  await selectedRow().focus();
  await page.keyboard.press('Home');
  for (let place = 1; place <= repetitionsEach; place++) {
    await expect(rowAt(place)).toBeFocused();
    times.push(await rowAt(place).getByRole('gridcell').nth(1).innerText());
    await page.keyboard.press('ArrowDown');
  }
  return times;
}

test('moving a limit judges all 75 again, says how many verdicts changed, and can be undone', async () => {
  await page.getByRole('button', { name: 'Change limits' }).click();
  const inward = limits().getByRole('textbox', { name: 'Inward, degrees' });
  const outOfLine = () => counts().filter({ hasText: 'out of line' });
  await expect(outOfLine()).toHaveText('15 out of line');
  await inward.fill('30');
  await inward.press('Enter');
  await expect(limits().getByRole('status')).toHaveText(
    `15 of ${repetitionsEach} repetitions changed verdict.`,
  );
  await expect(outOfLine()).toHaveCount(0);
  await expect(limits()).toContainText('Set by hand: Not signed');
  await page.getByRole('button', { name: 'Undo the last change' }).click();
  await expect(inward).toHaveValue('10°');
  await expect(outOfLine()).toHaveText('15 out of line');
  await expect(limits()).toContainText('Nobody has changed them.');
  await page.getByRole('button', { name: 'Close limits' }).click();
});

test('a correction changes the table, survives a reload, and can be undone', async () => {
  await selectRepetition(6);
  await page.getByRole('button', { name: 'Correct', exact: true }).click();
  await page.getByRole('menuitem', { name: /^Exclude/ }).click();
  await expect(page.getByRole('textbox', { name: 'Reason' })).toBeFocused();
  await page.keyboard.type('Held on to the table.');
  await page.keyboard.press('Enter');
  await expect(rowAt(6)).toContainText('excluded: Held on to the table.');
  await expect(glance()).toContainText(`${repetitionsEach - 1} of ${repetitionsEach}`);
  await expect(page.getByText('Saved on this device')).toBeVisible();
  await page.reload();
  await expect(sets().filter({ hasText: 'right' })).toContainText('Corrected by hand');
  await openSet('20 Apr 2026');
  await selectRepetition(6);
  await expect(rowAt(6)).toContainText('excluded: Held on to the table.');
  await page.keyboard.press('Control+z');
  await expect(rowAt(6)).not.toContainText('excluded');
  await expect(glance()).toContainText(`${repetitionsEach} of ${repetitionsEach}`);
  await expect(page.getByText('Saved on this device')).toBeVisible();
  await page.reload();
  await openSet('20 Apr 2026');
  await selectRepetition(6);
  await expect(rowAt(6)).not.toContainText('excluded');
});

test('left plays next to right, and last month next to today, in step', async () => {
  await selectRepetition(1);
  await page.getByRole('tab', { name: 'Cues' }).click();
  await page.getByRole('button', { name: 'Compare two' }).click();
  const dialog = page.getByRole('dialog', { name: 'Two repetitions in step' });
  const recording = dialog.getByRole('combobox', { name: 'Right: recording' });
  const repetition = (name: string) => dialog.getByRole('combobox', { name: `${name}: repetition` });
  const videos = dialog.getByLabel('The measured video');
  const timesS = () =>
    videos.evaluateAll((all) => all.map((video) => (video as HTMLVideoElement).currentTime));
  const [today, left] = clinicSessions[0]!.exercises;
  const lastMonth = clinicSessions[2]!.exercises[0];
  /** Both pictures show the turning point of the second repetition, each at its own time. */
  const expectInStep = async (other: typeof today) => {
    await repetition('Left').selectOption('Repetition 2');
    await repetition('Right').selectOption('Repetition 2');
    await dialog.getByRole('slider').fill('50');
    const expectedS = [today, other].map((one) => turningMs(one!, 1) / 1000);
    await expect
      .poll(async () => (await timesS()).map((one, at) => Math.abs(one - expectedS[at]!) < 0.3))
      .toEqual([true, true]);
  };
  const offered = await recording.getByRole('option').allInnerTexts();
  expect(offered.filter((title) => title.includes('left leg'))).toEqual(['Mon 20 Apr 2026, left leg, set 1']);
  expect(offered).toContain('Fri 20 Mar 2026, right leg, set 1');

  await recording.selectOption('Mon 20 Apr 2026, left leg, set 1');
  await expect(videos).toHaveCount(2);
  await expectInStep(left);
  await expectNoSeriousFault();
  const rightSource = () => videos.nth(1).evaluate((video: HTMLVideoElement) => video.src);
  const sourceBefore = await rightSource();
  await recording.selectOption('Fri 20 Mar 2026, right leg, set 1');
  // It is read first, and then shown at the worst of its repetitions.
  await expect.poll(rightSource).not.toBe(sourceBefore);
  await expectInStep(lastMonth);
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await backToList();
});
