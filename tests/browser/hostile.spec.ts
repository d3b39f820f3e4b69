import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { parsePlan } from '#documents/plan/parsePlan';
import { planToFragment } from '#documents/plan/planLink';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { demoSessions, saveSessions, type KeptSet } from '../support/browser/saveSessions';

/** Runs, where a page takes it for markup; short enough for a pseudonym. The start would be a formula in a table. */
const script = '=1+1<img src=x onerror="ran=1">';
const long = `${script}<script>ran=1</script><svg onload="ran=1">javascript:ran=1`;

/** Whether any of it ran; the tests switch the policy off that would stop it. */
const hasRun = (page: Page) => page.evaluate(() => 'ran' in window);

/** It stands there as text, and made no element. */
async function expectText(page: Page) {
  await expect(page.getByText(script).filter({ visible: true }).first()).toBeVisible();
  expect(await page.locator('img[src="x"], svg[onload], script:not([src])').count()).toBe(0);
  expect(await hasRun(page)).toBe(false);
}

test('a script in any text of a plan is shown as text, on the screen and on paper', async ({ page }) => {
  const example = parsePlan(readFileSync(`${projectRoot}fixtures/example.plan.json`, 'utf8'));
  const plan = {
    ...example,
    note: long,
    patient: script,
    beyondPainLimit: long,
    howOften: long,
    words: long,
  };
  await page.goto(`./#${planToFragment(plan)}`);
  await expect(page.getByText(`This plan is for ${script}.`)).toBeVisible();
  await expectText(page);
  await page.emulateMedia({ media: 'print' });
  await expectText(page);
});

test('a script in what the therapist writes is shown as text, on the printed plan too', async ({ page }) => {
  await page.goto('./');
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await page.getByLabel('Patient’s pseudonym').fill(script);
  await page.getByLabel('Your own words to the patient').fill(long);
  await page.getByRole('button', { name: 'Add a task' }).press('Enter');
  await page.getByRole('option', { name: 'Single-leg squat' }).press('Enter');
  await page.emulateMedia({ media: 'print' });
  await expectText(page);
});

test('a script in any text of a sent session is shown as text in the list, review and tables', async ({
  page,
}) => {
  const [first] = demoSessions();
  const { recording, session } = first!;
  const { startMs, endMs } = recording.derived.repetitions[1]!.events;
  const atMs = (startMs + endMs) / 2;
  const at = '2026-04-06T07:08:09.000Z';
  const hostile: KeptSet = {
    ...first!,
    recording: {
      ...recording,
      note: long,
      video: { ...recording.video, codec: script },
      corrections: [{ change: { kind: 'exclude', atMs, reason: long }, by: script, at }],
      review: {
        limitsSet: [{ limits: recording.limits, by: script, at }],
        remarks: [{ atMs, text: long, by: script, at }],
        cues: [{ atMs, text: long }],
        reviewed: { by: script, at },
      },
    },
    session: {
      ...session!,
      patient: script,
      remark: long,
      sets: session!.sets.slice(0, 1).map((line) => ({ ...line, cutShort: long })),
    },
  };
  await saveSessions(page, [hostile]);
  await page.goto('./');
  await openKeptSessions(page);
  await expect(page.getByRole('heading', { level: 2 })).toHaveText(script);
  await expectText(page);
  await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().click();
  await expect(page.getByRole('grid', { name: 'Repetitions' })).toBeVisible();
  await expectText(page);
  const tabs = await page.getByRole('tab').all();
  expect(tabs.length).toBeGreaterThan(2);
  for (const tab of tabs) {
    await tab.click();
    expect(await hasRun(page)).toBe(false);
  }
  await page.emulateMedia({ media: 'print' });
  expect(await hasRun(page)).toBe(false);
  await page.emulateMedia({ media: 'screen' });

  const table = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as CSV' }).click();
  await page.getByRole('menuitem').first().click();
  const cells = readFileSync(await (await table).path(), 'utf8').split(/[,\r\n]/);
  expect(cells.some((cell) => cell.includes('<img'))).toBe(true);
  for (const cell of cells) expect(cell).not.toMatch(/^"?=/);
});
