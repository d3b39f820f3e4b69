import { readFileSync } from 'node:fs';
import { expect, test, type Browser, type Page } from '@playwright/test';
import { keypointNames } from '#core/keypoints/keypointNames';
import { isOutOfLine } from '#documents/parcel/outOfLineSpans';
import { seriousFaults } from '../support/browser/accessibilityFaults';
import { addPictureReader } from '../support/browser/headlessPage';
import { openSentFile } from '../support/browser/openSentFile';
import type { Region } from '../support/browser/pictureReader';
import { example, shortExampleS, shortRepetitions } from '../support/browser/shortExample';
import { toExampleResult } from '../support/browser/toExampleResult';
import { writePlan } from '../support/browser/writePlan';

/** Videos are read and written slowly on a machine that does other things as well. */
const longMs = 240_000;
const viewport = { width: 390, height: 844 };

const { widthPx, heightPx } = example.video;
const durationMs = shortExampleS * 1000;
const outOfLine = shortRepetitions.filter(isOutOfLine).map(({ events }) => events);

/** Codecs blur what they write: black and equal pictures are so only within a few steps of 255. */
const darkest = 40;
const nearlyEqual = 8;
/** How often a picture is looked at. */
const oftenMs = 300;
/** How long a picture stands. */
const pictureMs = 1000 / example.video.frameRateHz;

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const part = (page: Page, name: string) => page.getByRole('radio', { name: new RegExp(`^${name}`) });

/** A patient who has done the example at home, on the page that sends it. */
async function toSending(browser: Browser, link: string): Promise<Page> {
  const context = await browser.newContext({ viewport });
  const page = await toExampleResult(context, link);
  await expect(page.getByText('Done well')).toBeVisible({ timeout: longMs });
  await press(page, 'Send to your therapist');
  await expect(page.getByRole('heading', { name: 'Send it to your therapist' })).toBeVisible();
  return page;
}

interface Sealed {
  name: string;
  mimeType: string;
  buffer: Buffer;
}

async function sendNow(page: Page): Promise<Sealed> {
  const download = page.waitForEvent('download');
  await press(page, 'Send');
  const file = await download;
  await expect(page.getByText(/^Saved as a file at \d\d:\d\d\.$/)).toBeVisible();
  return {
    name: file.suggestedFilename(),
    mimeType: 'application/octet-stream',
    buffer: readFileSync(await file.path()),
  };
}

/** What was sent can be sent once more, with another part of the video. */
async function choosePart(page: Page, name: string): Promise<void> {
  const again = page.getByRole('button', { name: 'Send it once more' });
  if (await again.isVisible()) await again.click();
  await expect(part(page, name)).toBeEnabled();
  await part(page, name).check({ force: true });
}

/** Prepares a part and sends it; also gives the size that was shown, MB. */
async function prepareAndSend(page: Page, name: string): Promise<{ sealed: Sealed; shownMb: number }> {
  await choosePart(page, name);
  const ready = page.getByLabel('What is sent of video 1');
  await expect(ready).toBeVisible({ timeout: longMs });
  await expect.poll(() => ready.evaluate((shown: HTMLVideoElement) => shown.videoHeight)).toBe(heightPx);
  const shown = await page
    .locator('label')
    .filter({ has: part(page, name) })
    .innerText();
  return { sealed: await sendNow(page), shownMb: Number(/, ([\d.]+) MB/.exec(shown)![1]) };
}

type Rows = Pick<Region, 'topPx' | 'bottomPx'>;

/** Regions at the middle of the pictures that stand at these times: a time on an edge may show another one. */
function regionsAt(timesMs: readonly number[], rowsAt: (timeMs: number) => Rows): Region[] {
  return timesMs.map((time) => {
    const timeMs = example.observed.timesMs.findLast((one) => one <= time) ?? 0;
    return { timeMs: timeMs + pictureMs / 2, ...rowsAt(timeMs) };
  });
}

/** The video that the review shows, once it shows it. */
async function shownVideo(page: Page): Promise<string> {
  const video = page.getByLabel('The measured video');
  await expect.poll(() => video.evaluate((shown: HTMLVideoElement) => shown.videoWidth)).toBe(widthPx);
  await addPictureReader(page);
  return video.evaluate((shown: HTMLVideoElement) => shown.src);
}

/** The brightest pixel of each region of the shown video. */
async function brightest(page: Page, regions: Region[]): Promise<number[]> {
  const src = await shownVideo(page);
  return page.evaluate(([src, regions]) => window.pictureReader.brightest(src, regions), [
    src,
    regions,
  ] as const);
}

/** By how much each region of the shown video differs, on average, from the recorded one. */
async function apart(page: Page, regions: Region[], recordedLaterMs = 0): Promise<number[]> {
  const src = await shownVideo(page);
  return page.evaluate(
    ([src, regions, laterMs]) => window.pictureReader.apart(src, 'example/example.mp4', regions, laterMs),
    [src, regions, recordedLaterMs] as const,
  );
}

/** The lowest point of the head in the example's picture at a time, px from its top. */
function headBottomPx(timeMs: number): number {
  const { timesMs, yPx } = example.observed;
  const frame = timesMs.findIndex((time) => time >= timeMs);
  const from = frame * keypointNames.length;
  return Math.max(...yPx.slice(from, from + keypointNames.indexOf('left_shoulder')));
}

/** The therapist opens what came, in the place of what came before, and looks at the set. */
async function review(page: Page, sealed: Sealed, isFirst: boolean): Promise<void> {
  await openSentFile(page, sealed);
  if (!isFirst) await press(page, 'Take the new version');
  await expect(page.getByRole('log')).toContainText(/Grey Otter 3, .*: kept/);
  await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().click();
  await expect(page.getByRole('grid', { name: 'Repetitions' }).getByRole('rowheader')).toHaveCount(
    shortRepetitions.length,
  );
}

test('the clinic sees no more of the video than the patient chose to send, in step with the joints', async ({
  page: clinic,
  browser,
}) => {
  test.setTimeout(600_000);
  const patient = await toSending(browser, await writePlan(clinic, shortRepetitions.length));
  let downloads = 0;
  patient.on('download', () => downloads++);

  await expect(part(patient, 'Only the repetitions out of line')).toHaveAccessibleName(
    new RegExp(`, about [\\d.]+ MB.*${outOfLine.length} of ${shortRepetitions.length} repetitions`),
  );
  await part(patient, 'The video without your head').check({ force: true });
  await expect(patient.getByRole('progressbar', { name: 'Preparing the video' })).toBeVisible();
  await expect(patient.getByRole('button', { name: 'Send', exact: true })).toBeDisabled();
  await press(patient, 'Stop preparing');
  await expect(part(patient, 'The video without your head')).not.toBeChecked();
  await expect(patient.getByRole('button', { name: 'Send', exact: true })).toBeDisabled();
  expect(await seriousFaults(patient)).toEqual([]);
  expect(downloads).toBe(0);

  const startedMs = Date.now();
  const headless = await prepareAndSend(patient, 'The video without your head');
  const preparedS = (Date.now() - startedMs) / 1000;
  const flagged = await prepareAndSend(patient, 'Only the repetitions out of line');
  await choosePart(patient, 'The whole video');
  const whole = await sendNow(patient);
  await choosePart(patient, 'No video');
  const bare = await sendNow(patient);

  // A browser that can't write videos says so, and takes the other choices.
  await patient.evaluate(() => Reflect.deleteProperty(window, 'VideoEncoder'));
  await press(patient, 'Send it once more');
  for (const name of ['Only the repetitions out of line', 'The video without your head']) {
    await expect(part(patient, name)).toHaveAccessibleName(/This browser can’t write videos/);
    await expect(part(patient, name)).toBeDisabled();
  }
  await expect(part(patient, 'The whole video')).toBeEnabled();
  const bytes = Object.fromEntries(
    Object.entries({ bare, flagged: flagged.sealed, headless: headless.sealed, whole }).map(
      ([name, { buffer }]) => [name, buffer.length] as const,
    ),
  ) as Record<'bare' | 'flagged' | 'headless' | 'whole', number>;
  process.stdout.write(
    `    sealed bytes: ${JSON.stringify(bytes)}; prepared in ${preparedS.toFixed(1)} s of a video of ${durationMs / 1000} s\n`,
  );
  // Told to a tenth; the seal adds to it.
  for (const { sealed, shownMb } of [headless, flagged])
    expect(Math.abs(sealed.buffer.length / 1e6 - shownMb)).toBeLessThan(0.06);
  expect(bytes.flagged).toBeGreaterThan(bytes.bare);
  expect(bytes.flagged).toBeLessThan(bytes.whole / 2);
  expect(bytes.headless).toBeLessThan(bytes.whole * 1.5);

  await review(clinic, headless.sealed, true);
  const often = Array.from({ length: Math.floor(durationMs / oftenMs) - 1 }, (_, i) => oftenMs * (i + 1));
  const heads = regionsAt(often, (timeMs) => ({
    topPx: 0,
    bottomPx: Math.round(headBottomPx(timeMs)) + 10,
  }));
  expect(Math.max(...(await brightest(clinic, heads)))).toBeLessThan(darkest);
  const legs = regionsAt(often, () => ({ topPx: Math.round(heightPx * 0.6), bottomPx: heightPx }));
  expect(Math.max(...(await apart(clinic, legs)))).toBeLessThan(nearlyEqual);
  // Where the legs move, no moment a quarter of a second away looks as alike.
  const moving = regionsAt(
    shortRepetitions.map(({ events }) => events.startMs + 800),
    () => ({ topPx: Math.round(heightPx * 0.4), bottomPx: heightPx }),
  );
  const inStep = await apart(clinic, moving);
  for (const laterMs of [-6 * pictureMs, 6 * pictureMs]) {
    const outOfStep = await apart(clinic, moving, laterMs);
    inStep.forEach((value, index) => expect(value).toBeLessThan(outOfStep[index]!));
  }

  await review(clinic, flagged.sealed, false);
  const shownMs = outOfLine.flatMap(({ startMs, endMs }) => [
    startMs + 100,
    (startMs + endMs) / 2,
    endMs - 100,
  ]);
  const shown = regionsAt(shownMs, () => ({ topPx: 0, bottomPx: heightPx }));
  expect(Math.max(...(await apart(clinic, shown)))).toBeLessThan(nearlyEqual);
  // Above and below the words that say that it was not sent.
  const hidden = often.filter((timeMs) =>
    outOfLine.every(({ startMs, endMs }) => timeMs < startMs - 1000 || timeMs > endMs + 1000),
  );
  expect(hidden.length).toBeGreaterThan(20);
  const [above, words, below] = [
    [0, 0.45],
    [0.45, 0.55],
    [0.55, 1],
  ].map(([from, to]) =>
    regionsAt(hidden, () => ({ topPx: Math.round(heightPx * from!), bottomPx: Math.round(heightPx * to!) })),
  );
  for (const rest of [above!, below!])
    expect(Math.max(...(await brightest(clinic, rest)))).toBeLessThan(darkest);
  expect(Math.min(...(await brightest(clinic, words!)))).toBeGreaterThan(darkest);
});
