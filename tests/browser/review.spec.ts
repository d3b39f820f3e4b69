import { expect, test, type Page } from '@playwright/test';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { seriousFaults } from '../support/browser/accessibilityFaults';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';
import { tenRepetitions } from '../support/browser/tenRepetitions';

const rows = (page: Page) =>
  page
    .getByRole('grid', { name: 'Repetitions' })
    .getByRole('row')
    .filter({ has: page.getByRole('gridcell') });

async function openExample(page: Page) {
  await page.goto('./');
  await page.getByRole('button', { name: 'Open the example' }).click();
  await expect(rows(page)).toHaveCount(6);
}

/** Opens the newest kept set of the invented patient in the review. */
async function openKeptSet(page: Page) {
  await page.goto('./');
  await openKeptSessions(page);
  const sets = page.getByRole('grid', { name: 'Sets' }).getByRole('row');
  await expect(sets.first()).toContainText('In line: ');
  await sets.first().focus();
  await page.keyboard.press('Enter');
  await expect(rows(page)).toHaveCount(6);
}

test('a repetition can be excluded by keyboard alone, stays excluded after a reload, and can be included again', async ({
  page,
}) => {
  await saveSessions(page, demoSessions());
  await openKeptSet(page);
  await expect(page.getByRole('region', { name: 'The set at a glance' })).toContainText('6 of 6');
  await rows(page).nth(1).focus();
  await page.keyboard.press('ArrowDown');
  await expect(rows(page).nth(2)).toHaveAttribute('aria-selected', 'true');
  await page.getByRole('button', { name: 'Correct', exact: true }).focus();
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter'); // The first choice: exclude.
  await page.keyboard.type('Stumbled.');
  await page.keyboard.press('Enter');
  await expect(rows(page).nth(2)).toContainText('excluded: Stumbled.');
  await expect(page.getByText('Saved on this device')).toBeVisible();
  await page.reload();
  await openKeptSet(page);
  await expect(rows(page).nth(2)).toContainText('excluded: Stumbled.');
  await expect(page.getByText('corrected by hand', { exact: true })).toBeVisible();
  await expect(page.getByRole('region', { name: 'The set at a glance' })).toContainText('5 of 6');
  await page.keyboard.press('Control+z');
  await expect(rows(page).nth(2)).not.toContainText('excluded');
  await page.keyboard.press('Control+Shift+z');
  await expect(rows(page).nth(2)).toContainText('excluded: Stumbled.');
});

test('the numbers follow when start and end are moved on the plot, and a joint in the picture', async ({
  page,
}) => {
  await openExample(page);
  await rows(page).nth(5).click();
  const facts = page.getByRole('region', { name: 'Repetition 6' });
  const before = await facts.innerText();
  const end = page.getByRole('slider', { name: 'End of repetition 6' });
  await end.focus();
  for (let press = 0; press < 4; press++) await page.keyboard.press('PageDown');
  await page.keyboard.press('Enter');
  await expect(rows(page).nth(5)).toContainText('set by hand');
  await page.keyboard.press('Control+z');
  await expect(rows(page).nth(5)).not.toContainText('set by hand');
  expect(await facts.innerText()).toBe(before);

  await page.keyboard.press('w');
  await page.getByRole('button', { name: 'Correct joints' }).click();
  const knee = page.getByRole('button', { name: /^Knee: drag/ });
  const box = (await knee.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 - 30, box.y + box.height / 2, { steps: 4 });
  await page.mouse.up();
  await expect(page.getByRole('button', { name: 'Corrections (1)' })).toBeVisible();
  await expect.poll(() => facts.innerText()).not.toBe(before);
});

test('the table can be sorted and filtered, and keys follow its order', async ({ page }) => {
  await openExample(page);
  await expect(page.getByRole('heading', { level: 1 })).toBeFocused();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter'); // The link past everything else.
  await expect(rows(page).nth(5)).toBeFocused();
  await page.getByRole('columnheader', { name: 'Peak angle' }).click();
  await page.getByRole('columnheader', { name: 'Peak angle' }).click();
  await expect(rows(page).first()).toContainText('17°');
  const second = await rows(page).nth(1).getByRole('gridcell').first().innerText();
  await rows(page).first().click();
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('region', { name: `Repetition ${second}` })).toBeVisible();
  await page.getByRole('button', { name: /^All/ }).first().click();
  await page.getByRole('option', { name: 'In line', exact: true }).click();
  await expect(rows(page)).toHaveCount(3);
});

test('ten repetitions are in sight in every laptop window, and the open limits cover nothing', async ({
  page,
}) => {
  await page.goto('./');
  await page.locator('input[type=file]').setInputFiles({
    name: 'ten.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(tenRepetitions())),
  });
  await expect(rows(page)).toHaveCount(10);
  const head = page.locator('.review-head');
  const change = page.getByRole('button', { name: /^(Change|Close) limits$/ });
  const correct = page.getByRole('button', { name: 'Correct', exact: true });
  for (const [width, height] of [
    [1440, 900],
    [1440, 764],
    [1280, 720],
  ] as const) {
    await page.setViewportSize({ width, height });
    // Nothing scrolls, and each row is whole, also within its own box.
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollHeight)).toBe(height);
    for (const row of await rows(page).all()) await expect(row).toBeInViewport({ ratio: 1 });
    // A change moves nothing in the head.
    expect((await head.boundingBox())!.height).toBeLessThan(50);
    await expect(correct).toBeInViewport({ ratio: 1 });

    await change.click();
    await expect(page.getByRole('textbox', { name: 'Inward, degrees' })).toBeInViewport({ ratio: 1 });
    await expect(correct).toBeInViewport({ ratio: 1 });
    await correct.click();
    await page.getByRole('menuitem').first().waitFor();
    await page.keyboard.press('Escape');
    await expect(rows(page).first()).toBeInViewport({ ratio: 1 });
    expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(height);
    await change.click();
  }
});

test('a repetition can be looped slowly, and cues are proposed and shown large', async ({ page }) => {
  await openExample(page);
  await rows(page).nth(1).click();
  await page.keyboard.press('s');
  await page.keyboard.press('l');
  const video = page.getByLabel('The measured video');
  await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
  expect(await video.evaluate((element: HTMLVideoElement) => element.playbackRate)).toBe(0.5);
  await page.keyboard.press('l');
  await page.getByRole('tab', { name: 'Cues' }).click();
  await page.getByRole('button', { name: 'Propose the most telling' }).click();
  const cues = page.getByRole('combobox', { name: 'Cue' });
  await expect(cues).toHaveCount(3);
  await cues.first().fill('Knee over your shoelaces.');
  await page.getByRole('button', { name: 'Show to the patient' }).click();
  await expect(page.getByRole('dialog')).toContainText('Knee over your shoelaces.');
  expect(await seriousFaults(page)).toEqual([]);
  const next = page.getByRole('dialog').getByRole('button', { name: 'Next' });
  for (const place of ['2 of 3', '3 of 3', '1 of 3']) {
    await next.press('Enter');
    await expect(page.getByRole('dialog')).toContainText(place);
  }
  await expect(next).toBeFocused();
  await page.getByRole('button', { name: 'Play slowly' }).press('Enter');
  await expect(page.getByRole('dialog').getByRole('button', { name: 'Pause' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
});

test('two repetitions play side by side in step', async ({ page }) => {
  await openExample(page);
  await page.getByRole('tab', { name: 'Cues' }).click();
  await page.getByRole('button', { name: 'Compare two' }).click();
  const dialog = page.getByRole('dialog', { name: 'Two repetitions in step' });
  await expect(dialog.getByRole('region')).toHaveCount(2);
  // Each at its worst: repetition 6 at 21.5 s.
  await expect(dialog.getByText('worst', { exact: true })).toBeVisible();
  await dialog.getByRole('combobox', { name: 'Right: repetition' }).selectOption('Repetition 2');
  await dialog.getByRole('slider').fill('50');
  const times = () =>
    dialog
      .getByLabel('The measured video')
      .evaluateAll((videos) => videos.map((video) => (video as HTMLVideoElement).currentTime));
  // Repetition 6 turns at about 22 s, repetition 2 at about 6.5 s.
  await expect.poll(async () => Math.round((await times())[0]!)).toBe(22);
  await expect.poll(async () => (await times())[1]!).toBeLessThan(8);
  expect(await seriousFaults(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
});

test('the live mirror says what to do before it asks for the camera, and can be left', async ({ page }) => {
  await openExample(page);
  await page.getByRole('tab', { name: 'Cues' }).click();
  await page.getByRole('button', { name: 'Live mirror' }).click();
  await expect(page.getByText('Nothing that the camera sees is kept')).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);
  await page.getByRole('button', { name: 'Close the mirror' }).click();
  await expect(rows(page)).toHaveCount(6);
  await page.getByRole('button', { name: 'New video' }).click();
  await openKeptSessions(page);
  await page.getByRole('button', { name: 'Live mirror' }).click();
  await page.getByRole('button', { name: 'Close the mirror' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Kept sessions' })).toBeVisible();
});

test('a repetition is shown to the patient straight from its numbers, with its cue', async ({ page }) => {
  await openExample(page);
  await rows(page).nth(5).click();
  await page.getByRole('button', { name: 'Show this one' }).click();
  const dialog = page.getByRole('dialog', { name: 'Cue for the patient' });
  await expect(dialog).toContainText('1 of 1');
  await expect(dialog.locator('.cue-text')).not.toBeEmpty();
  await expect
    .poll(() =>
      dialog.getByLabel('The measured video').evaluate((video: HTMLVideoElement) => video.currentTime),
    )
    .toBeGreaterThan(20);
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await page.getByRole('tab', { name: 'Remarks' }).click();
  await page.getByRole('button', { name: 'Mark as reviewed' }).click();
  await expect(page.getByText('Not saved yet')).toBeVisible();
});

test('limits set by hand stay in their set until they are asked to hold for later ones, and never reach reviewed ones', async ({
  page,
}) => {
  // Two sets of an invented patient, the same joints in both.
  await saveSessions(page, demoSessions());
  await page.goto('./');
  await openKeptSessions(page);
  const session = (day: string) => page.getByRole('option').filter({ hasText: day });
  const openFirstSet = async (day: string) => {
    await session(day).click();
    await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().click();
    await expect(rows(page)).toHaveCount(6);
    await page.getByRole('button', { name: 'Change limits' }).click();
  };
  const back = async () => {
    await expect(page.getByText('Saved on this device')).toBeVisible();
    await page.getByRole('button', { name: 'Back to kept sessions' }).click();
  };
  const limits = page.getByRole('region', { name: 'Limits', exact: true });
  const inward = limits.getByRole('textbox', { name: 'Inward, degrees' });
  const setInward = async (deg: string) => {
    await inward.fill(deg);
    await inward.press('Enter');
  };

  await openFirstSet('3 Apr 2026');
  await expect(limits).toContainText('From the plan.');
  await setInward('2');
  await expect(limits.getByRole('status')).toHaveText('5 of 6 repetitions changed verdict.');
  await expect(limits).toContainText('Set by hand: Not signed');
  await expect(limits).toContainText('They hold for this set alone.');
  await back();
  await expect(session('3 Apr 2026')).toContainText('4 of 6 out of line');
  await expect(session('5 Apr 2026')).not.toContainText('8 of 12 out of line');

  await openFirstSet('3 Apr 2026');
  await limits.getByRole('button', { name: 'Use for later sets too' }).click();
  await back();
  await expect(session('5 Apr 2026')).toContainText('8 of 12 out of line');

  await openFirstSet('5 Apr 2026');
  await expect(inward).toHaveValue('2°');
  await expect(limits).toContainText('2° inward, 10° outward, since Fri 3 Apr 2026');
  await expect(limits).toContainText('Carried over from the session of Fri 3 Apr 2026, set there by hand');
  await limits.getByRole('button', { name: 'As planned' }).click();
  await expect(inward).toHaveValue('10°');
  await page.keyboard.press('Control+z');
  await expect(limits).toContainText('Carried over from');
  await page.getByRole('tab', { name: 'Remarks' }).click();
  await page.getByRole('button', { name: 'Mark as reviewed' }).click();
  await back();

  await openFirstSet('3 Apr 2026');
  await setInward('20');
  await back();
  await openFirstSet('5 Apr 2026');
  await expect(inward).toHaveValue('2°');
  await expect(limits).toContainText('Carried over from the session of Fri 3 Apr 2026');
});

test('a limit of another measure is set by keyboard, judges all again, shows its column, and can be undone', async ({
  page,
}) => {
  await saveSessions(page, demoSessions());
  await openKeptSet(page);
  const limits = page.getByRole('region', { name: 'Limits', exact: true });
  const named = rows(page).filter({ hasText: 'out of line: depth' });
  await expect(page.getByRole('columnheader', { name: 'Depth' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Change limits' }).press('Enter');
  await limits.getByRole('button', { name: 'Measure' }).press('Enter');
  await page.getByRole('option', { name: 'Depth' }).press('Enter');
  await expect(limits).toContainText(
    'Default: no limit. Proposed: at most 29 %, at least 8 % (knees bent by 90° and 45°',
  );
  await limits.getByRole('button', { name: 'Set 29 %' }).press('Enter');
  await expect(limits.getByRole('status')).toContainText('repetitions changed verdict');
  const most = limits.getByRole('textbox', { name: 'At most, % of leg length' });
  await most.fill('20');
  await most.press('Enter');
  await expect(page.getByRole('columnheader', { name: 'Depth' })).toBeVisible();
  await expect(named.first()).toBeVisible();
  await expect(limits).toContainText('Knee angle 10° inward, 10° outward · Depth at most 20 %');
  // The plot, its strip and the comparison with the set show what was chosen in the one place.
  await expect(page.getByRole('region', { name: 'Depth over time' })).toBeVisible();
  await page.getByRole('tab', { name: 'Against the set' }).click();
  await expect(page.getByRole('img', { name: /^Depth over the movement/ })).toBeVisible();
  await page.getByRole('tab', { name: 'This one' }).click();
  await expect(page.getByRole('region', { name: /^Repetition \d/ })).toContainText(
    /out of line \(limit at most 20 %\): \d\d % of leg length, give or take \d+, at [\d.]+ s/,
  );
  expect(await seriousFaults(page)).toEqual([]);
  await expect(page.getByText('Saved on this device')).toBeVisible();
  await page.reload();
  await openKeptSet(page);
  await expect(named.first()).toBeVisible();
  await expect(limits).toContainText('Depth at most 20 %');
  await page.getByRole('button', { name: 'Change limits' }).press('Enter');
  await limits.getByRole('button', { name: 'Default' }).press('Enter');
  await expect(named).toHaveCount(0);
  await page.keyboard.press('Control+z');
  await expect(named.first()).toBeVisible();
});

test('the review and the kept sessions have no serious accessibility fault', async ({ page }) => {
  await saveSessions(page, demoSessions());
  await page.goto('./');
  await openKeptSessions(page);
  await expect(page.getByRole('grid', { name: 'Sets' })).toBeVisible();
  expect(await seriousFaults(page)).toEqual([]);
  await openKeptSet(page);
  for (const name of ['This one', 'Against the set', 'Remarks', 'Cues']) {
    await page.getByRole('tab', { name }).click();
    expect(await seriousFaults(page)).toEqual([]);
  }
  await page.getByRole('button', { name: 'Correct joints' }).click();
  expect(await seriousFaults(page)).toEqual([]);
});
