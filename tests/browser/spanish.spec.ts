import { expect, test, type Page } from '@playwright/test';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { deviceOf } from '#tools/commands/tools/deviceOf';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import { spanish as es } from '#words/messages/spanish';
import { openAnew } from '../support/browser/openAnew';
import { example, shortExample, shortRepetitions } from '../support/browser/shortExample';
import { writePlan } from '../support/browser/writePlan';

/** Videos are read slowly on a machine that does other things as well, ms. */
const longMs = 240_000;
const phone = { width: 390, height: 844 };
const sizes = [{ width: 844, height: 390 }, { width: 1440, height: 900 }, phone];

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const choose = (page: Page, score: number) =>
  page.getByRole('radio', { name: new RegExp(`^${score}\\b`) }).check({ force: true });

/** Every word of the page fits beside the others: nothing wider than the window, no button wider than its own words. */
async function expectToFit(page: Page): Promise<void> {
  for (const size of sizes) {
    await page.setViewportSize(size);
    const cut = await page.evaluate(() => [
      ...(document.documentElement.scrollWidth > innerWidth ? ['the page'] : []),
      ...[...document.querySelectorAll<HTMLElement>('button, h1, h2, p, li, label')]
        .filter((one) => one.scrollWidth > one.clientWidth + 1 && getComputedStyle(one).display !== 'inline')
        .filter((one) => one.innerText.trim() !== '' && !one.className.includes('visually-hidden'))
        .map((one) => one.innerText),
    ]);
    expect(cut).toEqual([]);
  }
}

test('a plan in Spanish is Spanish from the link to what was sent, and the patient can switch', async ({
  page: clinic,
  browser,
  baseURL,
}) => {
  test.setTimeout(600_000);
  const link = await writePlan(clinic, shortRepetitions.length, 'Spanish');
  const context = await browser.newContext({
    viewport: phone,
    storageState: deviceOf('exercises', baseURL!),
  });
  await replayJoints(context, recordingTrack(example));
  const page = await context.newPage();
  const title = (key: keyof typeof es) => page.getByRole('heading', { level: 1, name: es[key], exact: true });

  await page.goto(link);
  await expect(title('overview.title')).toBeVisible();
  await expect(page.locator('html')).toHaveAttribute('lang', 'es');
  await page.getByText(es['exercise.step-by-step']).click();
  await expect(
    page.getByText('Pon delante el pie derecho, y el pie izquierdo un poco más atrás.'),
  ).toBeVisible();
  await expectToFit(page);
  await press(page, 'English');
  await expect(page.getByRole('heading', { name: 'Hello. This is your plan', exact: true })).toBeVisible();
  await press(page, 'Español');
  await press(page, es['home.continue']);
  await expect(title('overview.have-ready')).toBeVisible();
  await expectToFit(page);
  await press(page, es['home.continue']);
  await expect(title('overview.when-to-stop')).toBeVisible();
  await page.getByText(es['rules.afterwards']).click();
  await expect(page.getByText(es['caution.first-beyond-limit'])).toBeVisible();
  await expectToFit(page);
  await press(page, es['overview.ready']);
  await expect(title('check.title')).toBeVisible();
  await expectToFit(page);
  await press(page, es['check.none']);
  await expect(title('pain.before')).toBeVisible();
  await expectToFit(page);
  await choose(page, 1);
  await press(page, es['home.continue']);
  await expect(title('camera.title')).toBeVisible();
  await press(page, es['camera.switch-on']);
  await expect(page.getByText(es['camera-trouble.way-out'])).toBeVisible();
  await expectToFit(page);
  const chooser = page.waitForEvent('filechooser');
  await press(page, es['camera.open-video']);
  await (await chooser).setFiles(await shortExample());
  await page.getByRole('button', { name: es['home.continue'] }).click({ timeout: longMs });
  for (const score of [2, 1, 5]) {
    await choose(page, score);
    await press(page, es['home.continue']);
  }
  await expect(title('after.add')).toBeVisible();
  await expectToFit(page);
  await press(page, es['after.save']);
  await expect(title('summary.well-done')).toBeVisible();
  const told = page.locator('.told-text');
  await expect(told.first()).toHaveText(/^En unas \d de 3 repeticiones la rodilla se quedó sobre el pie\.$/, {
    timeout: longMs,
  });
  await expect(told.last()).toHaveText(/^En la tercera repetición la rodilla se fue hacia dentro/);
  await expectToFit(page);

  await press(page, es['summary.send']);
  await expect(title('send.title')).toBeVisible();
  await expectToFit(page);
  const noVideo = page.getByRole('radio', { name: new RegExp(`^${es['send.part.none']}`) });
  await expect(noVideo).toBeEnabled();
  await noVideo.check({ force: true });
  const download = page.waitForEvent('download');
  await press(page, es['send.send']);
  expect((await download).suggestedFilename()).toMatch(/^overfoot-session-[\d-]+\.age$/);
  await expect(page.getByText(/^Guardado como archivo a las \d{1,2}:\d\d\.$/)).toBeVisible();
  await expectToFit(page);
  await press(page, es['send.done']);

  // The next time, it is Spanish from the first word on.
  await openAnew(page);
  await expect(title('today.title')).toBeVisible();
  await expect(page.getByText('3 veces, pierna derecha')).toBeVisible();
  await expectToFit(page);
  await context.close();
});
