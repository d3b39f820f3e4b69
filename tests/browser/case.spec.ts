import { expect, test, type Page } from '@playwright/test';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { accessibilityFaults } from '../support/browser/accessibilityFaults';
import { openAnew } from '../support/browser/openAnew';

/** Invented. */
const pseudonym = 'Invented Otter 52';

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).click();
const card = (page: Page, name: string) => page.getByRole('region', { name, exact: true });

/** Opens a card that is one line while nothing is in it. */
async function unfold(page: Page, name: string) {
  const folded = card(page, name);
  await folded.getByRole('heading', { name }).click();
  return folded;
}

/** The page of a patient of whom one clip is kept. */
async function openPatient(page: Page): Promise<void> {
  await page.goto('./');
  await page.locator('input[type=file]').setInputFiles(`${projectRoot}fixtures/example.session.json`);
  await press(page, 'Keep for …');
  await page.getByLabel('Filmed on').fill('2026-04-01');
  await page.getByRole('textbox', { name: 'Pseudonym' }).fill(pseudonym);
  await press(page, /^Keep$/);
  await expect(page.getByText(`Kept for ${pseudonym}`)).toBeVisible();
  await page.goto('./');
  await press(page, /^Patients/);
  await page.getByRole('list', { name: 'Patients' }).getByRole('button').first().click();
  await expect(page.getByRole('heading', { level: 1, name: pseudonym })).toBeVisible();
}

test('a restriction refuses a plan until somebody signs over it, and a pause is entered and ended', async ({
  page,
}) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await openPatient(page);
  const restrictions = await unfold(page, 'Restrictions set by a surgeon or doctor');
  await restrictions.getByRole('button', { name: 'Add a restriction' }).click();
  await restrictions.getByLabel(/^Bends at most/).fill('60');
  await restrictions.getByRole('button', { name: 'Keep the restriction' }).click();
  await expect(restrictions.getByRole('alert')).toHaveText('Sign with your initials.');
  await restrictions.getByLabel('Your initials').fill('AB');
  await restrictions.getByRole('button', { name: 'Keep the restriction' }).click();
  await expect(restrictions).toContainText('Surgeon: the right knee bends to 60° at most');

  await press(page, 'Write a plan');
  await press(page, 'Add a task');
  await page.getByRole('option', { name: /Single-leg squat/ }).click();
  const task = page.getByRole('region', { name: /Task 1: Single-leg squat/ });
  await task.getByRole('button', { name: /^Side|Side$/ }).click();
  await page.getByRole('option', { name: 'Right leg', exact: true }).click();
  const beyond = page.getByText(/says nothing of how far the right knee bends/);
  await expect(beyond).toBeVisible();
  await expect(page.getByRole('button', { name: 'Save as a file' })).toBeDisabled();
  expect(await accessibilityFaults(page)).toEqual([]);
  await page.getByLabel('Why it may all the same, in a line').fill('Agreed by telephone.');
  await page.getByRole('region', { name: 'Restrictions' }).getByLabel('Your initials').fill('AB');
  await press(page, 'Sign over it');
  await expect(beyond).toBeHidden();
  await page
    .getByRole('textbox', { name: /Times a week/ })
    .first()
    .fill('3');
  await page.keyboard.press('Tab');
  const saved = page.waitForEvent('download');
  await press(page, 'Save as a file');
  await saved;

  await page.goBack();
  await expect(page.getByRole('list', { name: 'Signed over' })).toContainText('Why: Agreed by telephone.');
  const done = card(page, 'Done and due');
  await done.getByRole('button', { name: 'Add a pause' }).click();
  await done.getByLabel('First day of the pause').fill('2026-04-05');
  await done.getByLabel('Your initials').fill('AB');
  await done.getByRole('button', { name: 'Keep the pause' }).click();
  await expect(done).toContainText('Sunday 5 April 2026 until further notice (AB');
  await done.getByRole('button', { name: 'Change its end …' }).click();
  await done.getByLabel(/^Last day of it/).fill('2026-04-04');
  await done.getByLabel('Your initials').fill('CD');
  await done.getByRole('button', { name: 'Keep its end' }).click();
  await expect(done.getByRole('alert')).toContainText('The last day is before the first one.');
  await done.getByLabel(/^Last day of it/).fill('2026-04-09');
  await done.getByRole('button', { name: 'Keep its end' }).click();
  await expect(done).toContainText('to Thursday 9 April 2026');
  await done.getByRole('button', { name: 'Take out …' }).click();
  await page.getByRole('dialog').getByLabel('Your initials').fill('AB');
  await page.getByRole('dialog').getByRole('button', { name: 'Take out' }).click();
  await expect(done.getByRole('list', { name: 'Pauses' })).toBeHidden();
});

test('answers, warning signs and values after surgery are written down, and a questionnaire is imported', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openPatient(page);
  await card(page, 'Who').getByRole('button', { name: 'Change …' }).click();
  await page.getByLabel('How it began').selectOption('gradual');
  await page.getByLabel('Knee surgery').selectOption('left');
  await press(page, /^Keep$/);
  await expect(page.getByRole('alert')).toContainText('Say what the operation was');
  await page.getByLabel('What was done').fill('invented operation');
  await page.getByLabel('Day of the surgery').fill('2026-01-12');
  await press(page, /^Keep$/);
  await expect(card(page, 'Who')).toContainText('invented operation, left knee, Monday 12 January 2026');

  const lines = card(page, 'Lines before running and sport');
  await lines.getByRole('button', { name: 'Write down a value' }).click();
  await lines.getByLabel('What was measured').selectOption('bend-pct');
  await lines.getByLabel(/^Value, percent/).fill('96');
  await lines.getByLabel('Your initials').fill('AB');
  await lines.getByRole('button', { name: 'Keep the value' }).click();
  await expect(lines).toContainText(/Bending, percent of the other knee: met\. 96 %/);
  await expect(lines).toContainText(/Control: .*mean of the operated leg: not measured\./);

  const signs = await unfold(page, 'Warning signs asked about');
  await signs.getByRole('button', { name: 'Write down a visit' }).click();
  await signs.getByLabel('a calf that is newly swollen, warm or painful').selectOption('applies');
  await signs.getByRole('button', { name: 'All others were asked: no' }).click();
  await signs.getByLabel('Your initials').fill('AB');
  await signs.getByRole('button', { name: 'Keep the answers' }).click();
  await expect(signs).toContainText('applied: a calf that is newly swollen, warm or painful.');

  const asked = await unfold(page, 'Questionnaires');
  await asked.getByText(/^Questionnaires of this practice/).click();
  const file = (text: string) => ({
    name: 'invented.json',
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  });
  const choose = async (text: string) => {
    const chooser = page.waitForEvent('filechooser');
    await asked.getByRole('button', { name: 'Import a questionnaire …' }).click();
    await (await chooser).setFiles(file(text));
  };
  await choose('{}');
  await expect(page.getByRole('alert')).toContainText('is no Questionnaire of FHIR R4 in JSON');
  const item = [{ linkId: 'a', text: 'An invented question?', type: 'boolean' }];
  const url = 'https://example.org/fhir/Questionnaire/invented';
  await choose(JSON.stringify({ resourceType: 'Questionnaire', url, title: 'Invented', item }));
  await expect(asked).toContainText(`Invented: ${url}`);
  await asked.getByRole('button', { name: 'Write down answers' }).click();
  await asked.getByLabel('Questionnaire', { exact: true }).selectOption('Invented');
  await asked.getByLabel('An invented question?').selectOption('yes');
  await asked.getByLabel('Your initials').fill('AB');
  await asked.getByRole('button', { name: 'Keep the answers' }).click();
  await expect(asked).toContainText('No score is known for this one.');
  expect(await accessibilityFaults(page)).toEqual([]);

  await openAnew(page);
  await expect(page.getByRole('list', { name: 'Patients' })).toContainText(/a sign at the visit of \w+ \d/);
});
