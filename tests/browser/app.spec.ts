import { readFileSync } from 'node:fs';
import { expect, test, type Page } from '@playwright/test';
import { parseRecording } from '#documents/recording/parseRecording';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';

const shortVideo = `${projectRoot}fixtures/short.mp4`;

async function openExample(page: Page) {
  await page.goto('./');
  await page.getByRole('button', { name: 'Open the example' }).click();
  await expect(rows(page)).toHaveCount(6);
}

/** The table's rows without its head. */
const rows = (page: Page) =>
  page
    .getByRole('grid', { name: 'Repetitions' })
    .getByRole('row')
    .filter({ has: page.getByRole('gridcell') });

const currentTimeS = (page: Page) =>
  page.getByLabel('The measured video').evaluate((video: HTMLVideoElement) => video.currentTime);

const verdicts = (page: Page) => rows(page).getByRole('rowheader').allInnerTexts();

/** Where a repetition starts to be loaded, as its row says, s. */
async function rowTimeS(page: Page, index: number): Promise<number> {
  const text = await rows(page).nth(index).getByRole('gridcell').nth(1).innerText();
  return Number.parseFloat(text);
}

test.describe('the example', () => {
  test('opens as a table of repetitions with its video', { tag: '@smoke' }, async ({ page }) => {
    await openExample(page);
    await page.getByRole('button', { name: 'Invented example' }).click();
    await expect(page.getByText('The person is invented and rendered')).toBeVisible();
    await page.keyboard.press('Escape');
    // It stands 3° to the person's left (example.truth.json).
    await page.getByRole('button', { name: 'About the angle' }).click();
    await expect(
      page.getByText(/the camera looked from about [2-4]° to the person’s left, give or take \d°/),
    ).toBeVisible();
    await page.keyboard.press('Escape');
    for (const row of await rows(page).all()) {
      await expect(row).toContainText(/in line|can’t tell|out of line|not measured/);
      await expect(row).toContainText(/\d+ %/);
      await expect(row).toContainText(/\d+° (in|out) ±\d+/);
    }
    await expect(
      page.getByRole('group', { name: 'Repetitions in order of time' }).getByRole('button'),
    ).toHaveCount(6);
    await expect
      .poll(() =>
        page.getByLabel('The measured video').evaluate((video: HTMLVideoElement) => video.videoWidth),
      )
      .toBe(540);
  });

  test('shows a repetition by row, key, plot and mark', async ({ page }) => {
    await page.setViewportSize({ width: 1440, height: 900 });
    await openExample(page);
    await test.step('it opens at the worst instant of the gravest repetition', async () => {
      const selected = page.getByRole('row', { selected: true });
      await expect(selected).toContainText('out of line');
      await expect.poll(() => currentTimeS(page)).toBeCloseTo(21.5, 0);
    });
    await test.step('the leg, its lane and the knee’s mark are drawn over the video', async () => {
      await page.getByRole('button', { name: 'Go to this moment' }).click();
      const drawn = () =>
        page.locator('.stage-overlay').evaluate((canvas: HTMLCanvasElement) => {
          const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
          const seen = { leg: 0, lane: 0, outOfLine: 0 };
          for (let at = 0; at < data.length; at += 4) {
            const [red, green, blue, alpha] = data.slice(at, at + 4) as unknown as [
              number,
              number,
              number,
              number,
            ];
            if (alpha > 250 && red > 250 && green > 250 && blue > 250) seen.leg++;
            if (alpha > 250 && red < 100 && green > 150 && blue > 220) seen.lane++;
            if (alpha > 250 && red > 200 && green < 110 && blue < 20) seen.outOfLine++;
          }
          return Object.entries(seen).flatMap(([part, pixels]) => (pixels > 60 ? [part] : []));
        });
      await expect.poll(drawn).toEqual(['leg', 'lane', 'outOfLine']);
    });
    await test.step('a row moves the video, and shows its worst instant', async () => {
      await rows(page).nth(3).click();
      const startS = await rowTimeS(page, 3);
      await expect.poll(() => currentTimeS(page)).toBeGreaterThan(startS - 0.1);
      expect(await currentTimeS(page)).toBeLessThan(startS + 2.5);
      await expect(page.getByRole('region', { name: 'Repetition 4' })).toContainText(
        /\d+ degrees? (in|out)ward, give or take \d+, at \d+\.\d s/,
      );
      await page.getByRole('button', { name: 'Leg', exact: true }).click();
      await expect(page.getByText(/Repetition 4, worst instant/)).toBeVisible();
      await page.getByRole('button', { name: 'Leg', exact: true }).click();
    });
    await test.step('keys lead through rows and frames, play and pause', async () => {
      await rows(page).nth(1).click();
      await page.keyboard.press('ArrowDown');
      await expect(rows(page).nth(2)).toHaveAttribute('aria-selected', 'true');
      const startS = await rowTimeS(page, 2);
      await expect.poll(() => currentTimeS(page)).toBeGreaterThan(startS - 0.1);
      const beforeS = await currentTimeS(page);
      await page.keyboard.press('ArrowRight');
      await expect.poll(() => currentTimeS(page)).toBeCloseTo(beforeS + 0.04, 2);
      await page.keyboard.press(' ');
      await expect(page.getByRole('button', { name: 'Pause' })).toBeVisible();
      await expect.poll(() => currentTimeS(page)).toBeGreaterThan(beforeS + 0.3);
      await page.keyboard.press(' ');
      await expect(page.getByRole('button', { name: 'Play' })).toBeVisible();
    });
    await test.step('the plot and the marks below it move the video', async () => {
      const plot = page.getByRole('slider', { name: 'Time in the video' });
      const box = (await plot.boundingBox())!;
      await plot.click({ position: { x: box.width * 0.75, y: box.height / 2 } });
      await expect.poll(() => currentTimeS(page)).toBeGreaterThan(17);
      expect(await currentTimeS(page)).toBeLessThan(20);
      await page.getByRole('button', { name: /^Repetition 2:/ }).click();
      const secondS = await rowTimeS(page, 1);
      await expect.poll(() => currentTimeS(page)).toBeLessThan(secondS + 2.5);
      expect(await currentTimeS(page)).toBeGreaterThan(secondS - 0.1);
      await expect(rows(page).nth(1)).toHaveAttribute('aria-selected', 'true');
    });
  });

  test('judges again at once when a limit moves, which can be undone, and when the side changes', async ({
    page,
  }) => {
    await openExample(page);
    const before = await verdicts(page);
    await page.getByRole('button', { name: 'Change limits' }).click();
    const inward = page.getByRole('textbox', { name: 'Inward, degrees' });
    await inward.fill('3');
    await inward.press('Enter');
    await expect.poll(() => verdicts(page)).not.toEqual(before);
    await expect(page.getByText(/[1-6] of 6 repetitions changed verdict/)).toBeVisible();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => verdicts(page)).toEqual(before);
    await page.getByRole('slider', { name: 'Inward' }).focus();
    for (let press = 0; press < 8; press++) await page.keyboard.press('ArrowLeft');
    await expect.poll(() => verdicts(page)).not.toEqual(before);
    for (let press = 0; press < 8; press++) await page.keyboard.press('Control+z');
    await expect.poll(() => verdicts(page)).toEqual(before);
    await page.getByRole('radio', { name: 'Left' }).check({ force: true });
    await page.getByRole('button', { name: 'Switch to the right leg' }).click();
    await expect.poll(() => verdicts(page)).toEqual(before);
  });

  test('fits laptops and phones, and fingers', async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await page.goto('./');
    const small = () =>
      page
        .locator(
          'button:not(.skip-link):visible, .side-option:visible, .number-input:visible, .table-row:visible',
        )
        .evaluateAll((targets) =>
          targets
            .map((target) => ({ text: target.textContent, box: target.getBoundingClientRect() }))
            // Marks in the strip are as wide as their neighbours allow; the table's rows do the same.
            .filter(({ box }) => box.height < 44 || box.width < 30)
            .map(({ text, box }) => `${text}: ${box.width} x ${box.height}`),
        );
    expect(await small()).toEqual([]);
    await openExample(page);
    expect(await small()).toEqual([]);

    await test.step('a laptop without scrolling, and nothing sideways', async () => {
      await page.setViewportSize({ width: 1440, height: 900 });
      await rows(page).nth(5).click();
      const excess = () =>
        page.evaluate(() => {
          const { scrollWidth, scrollHeight } = document.documentElement;
          return [scrollWidth - innerWidth, scrollHeight - innerHeight];
        });
      expect(await excess()).toEqual([0, 0]);
      for (const width of [1280, 1024, 820, 390]) {
        await page.setViewportSize({ width, height: 844 });
        await expect.poll(async () => (await excess())[0], `at ${width} px`).toBe(0);
      }
    });
    await test.step('the selected row of a short table stays in sight', async () => {
      await page.setViewportSize({ width: 1366, height: 650 });
      await openExample(page);
      const hidden = () =>
        page.getByRole('row', { selected: true }).evaluate((row) => {
          const [inner, outer] = [row, row.closest('.table-scroll')!].map((part) =>
            part.getBoundingClientRect(),
          );
          const head = row.closest('table')!.tHead!.getBoundingClientRect();
          return Math.max(0, inner!.bottom - outer!.bottom) + Math.max(0, head.bottom - inner!.top);
        });
      await expect.poll(hidden).toBeLessThan(1);
      const halfHidden = () =>
        rows(page).evaluateAll((all) => {
          const headPx = all[0]!.closest('table')!.tHead!.getBoundingClientRect().bottom;
          const boxes = all.map((row) => row.getBoundingClientRect());
          return boxes.filter(({ top, bottom }) => top < headPx - 1 && bottom > headPx + 1).length;
        });
      expect(await halfHidden()).toBe(0);
      await page.setViewportSize({ width: 1440, height: 900 });
      await page.getByRole('button', { name: /^Repetition 5:/ }).click();
      await page.getByRole('button', { name: /^Repetition 6:/ }).click();
      await expect.poll(halfHidden).toBe(0);
      await page.setViewportSize({ width: 1366, height: 650 });
      await page.getByRole('button', { name: /^Repetition 1:/ }).click();
      await expect(rows(page).nth(0)).toHaveAttribute('aria-selected', 'true');
      await expect.poll(hidden).toBeLessThan(1);
    });
  });

  test('saves a recording that opens again without its video, which can be attached', async ({ page }) => {
    await openExample(page);
    const before = await verdicts(page);
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save recording' }).click();
    const download = await coming;
    expect(download.suggestedFilename()).toMatch(/^overfoot-session-\d{4}-\d\d-\d\d\.json$/);
    const path = test.info().outputPath('saved.json');
    await download.saveAs(path);

    await page.goto('./');
    await page.locator('input[type=file]').setInputFiles(path);
    await expect.poll(() => verdicts(page)).toEqual(before);
    await expect(page.getByText('The video is not attached.')).toBeVisible();
    await page.locator('input[type=file]').setInputFiles(shortVideo);
    await expect(page.getByRole('alert')).toContainText('is not the video that was measured');
    await page.locator('input[type=file]').setInputFiles(`${projectRoot}fixtures/example.mp4`);
    await expect(page.getByLabel('The measured video')).toBeVisible();
    await expect(page.getByRole('alert')).toHaveCount(0);
  });

  test('gives no angle from a view that is turned too far, and says so in large text', async ({ page }) => {
    await page.goto('./');
    await page.locator('input[type=file]').setInputFiles({
      name: 'turned.json',
      mimeType: 'application/json',
      buffer: Buffer.from(turnedRecording()),
    });
    await expect(page.getByRole('heading', { name: 'No angle can be given from this view' })).toBeVisible();
    await page.getByRole('button', { name: 'About the angle' }).click();
    await expect(page.getByText(/No angle is given: .* to the person’s right/)).toBeVisible();
    await page.keyboard.press('Escape');
    for (const row of await rows(page).all()) {
      await expect(row).toContainText('turned too far from the camera');
      await expect(row).not.toContainText(/\d°/);
    }
    await expect(page.locator('.plot-curve')).toHaveAttribute('d', '');
  });
});

/** The example as if filmed from far aside: what lies below a hip is moved by as much as its thigh points forward. */
function turnedRecording(): string {
  const recording = JSON.parse(readFileSync(`${projectRoot}fixtures/example.session.json`, 'utf8')) as {
    observed: { points: string[]; timesMs: number[]; xPx: number[]; yPx: number[] };
  };
  const { points, timesMs, xPx, yPx } = recording.observed;
  const seenX = [...xPx];
  const thighPx = 150;
  for (let frame = 0; frame < timesMs.length; frame++) {
    const at = (name: string) => frame * points.length + points.indexOf(name);
    for (const side of ['left', 'right']) {
      const [hip, knee] = [at(`${side}_hip`), at(`${side}_knee`)];
      const seenPx = Math.hypot(seenX[hip]! - seenX[knee]!, yPx[hip]! - yPx[knee]!);
      const asidePx = 0.62 * Math.sqrt(Math.max(0, thighPx ** 2 - seenPx ** 2));
      for (const joint of ['knee', 'ankle', 'heel', 'foot_index']) xPx[at(`${side}_${joint}`)]! += asidePx;
    }
  }
  return JSON.stringify(recording);
}

test.describe('a video of your own', () => {
  async function choose(page: Page, file: Parameters<ReturnType<Page['locator']>['setInputFiles']>[0]) {
    await page.goto('./');
    await page.locator('input[type=file]').setInputFiles(file);
  }

  async function measureWithLite(page: Page) {
    await page.getByRole('radio', { name: 'Right leg' }).check({ force: true });
    await page.getByRole('button', { name: /How closely to look/ }).click();
    await page.getByRole('option', { name: /lite/ }).click();
    await page.getByRole('button', { name: 'Measure this video' }).click();
  }

  /** Known joints in the place of the network, which privacy.spec.ts runs from the same page. */
  const replayExample = (page: Page) => {
    const document = readFileSync(`${projectRoot}fixtures/example.session.json`, 'utf8');
    return replayJoints(page, recordingTrack(parseRecording(document)), 10);
  };

  test('is measured from the file to the table', async ({ page }) => {
    await replayExample(page);
    await choose(page, `${projectRoot}fixtures/example.mp4`);
    await expect(page.getByText(/540 × 960/)).toBeVisible();
    await measureWithLite(page);
    await expect(page.getByText(/\d+ of \d+ frames/)).toBeVisible();
    await expect(rows(page)).toHaveCount(6, { timeout: 60_000 });
    await rows(page).nth(1).click();
    await expect(page.getByRole('region', { name: 'Repetition 2' })).toBeVisible();
    await expect(page.getByRole('heading', { name: 'example.mp4' })).toBeVisible();
  });

  test('can be dropped', async ({ page }) => {
    await page.goto('./');
    const data = await page.evaluateHandle(async () => {
      const response = await fetch('./example/example.mp4');
      const transfer = new DataTransfer();
      transfer.items.add(new File([await response.blob()], 'dropped.mp4', { type: 'video/mp4' }));
      return transfer;
    });
    const area = page.locator('.file-drop');
    for (const type of ['dragenter', 'dragover', 'drop']) {
      await area.dispatchEvent(type, { dataTransfer: data, clientX: 400, clientY: 300 });
    }
    await expect(page.getByText('dropped.mp4')).toBeVisible();
  });

  test('can be cancelled while it is tracked, and keeps what was chosen', async ({ page }) => {
    await replayExample(page);
    await choose(page, shortVideo);
    await measureWithLite(page);
    await expect(page.getByRole('progressbar')).toBeVisible();
    await page.getByRole('button', { name: 'Cancel' }).click();
    await expect(page.getByText('short.mp4')).toBeVisible();
    await expect(page.getByRole('radio', { name: 'Right leg' })).toBeChecked();
    await expect(page.getByRole('alert')).toHaveCount(0);
  });

  test('needs a side, and the button asks for it', async ({ page }) => {
    await choose(page, shortVideo);
    await page.getByRole('button', { name: 'Measure this video' }).click();
    await expect(page.getByText('Choose the working side first.')).toBeVisible();
  });

  test('that is no video is explained in a sentence, and the next file can be opened', async ({ page }) => {
    await choose(page, {
      name: 'notes.mp4',
      mimeType: 'video/mp4',
      buffer: Buffer.from('these are only words'),
    });
    await expect(page.getByRole('alert')).toContainText('"notes.mp4" is not a video that can be read');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'none.mp4', mimeType: 'video/mp4', buffer: Buffer.alloc(0) });
    await expect(page.getByRole('alert')).toContainText('"none.mp4" is empty');
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'old.json', mimeType: 'application/json', buffer: Buffer.from('{"format":1}') });
    await expect(page.getByRole('alert')).toContainText('not a recording document');
    await page.locator('input[type=file]').setInputFiles(shortVideo);
    await expect(page.getByText(/540 × 960/)).toBeVisible();
    await expect(page.getByRole('alert')).toHaveCount(0);
  });
});
