import { expect, test, type Browser, type Page } from '@playwright/test';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import { seriousFaults } from '../../support/browser/accessibilityFaults';
import { launchWithCamera } from '../../support/browser/filmedBrowser';
import { filmSitToStands, numberedCameraFile } from '../../support/browser/numberedFilm';

/** One repetition, 5.4 s; its joints are known, since the network is not what is tested. */
const film = filmSitToStands([20]);
/** Long enough for one time through it, ms; other programs may take the processor meanwhile. */
const onceMs = 25_000;
/** The rest of a repetition that had begun, the next one, and a little of the quiet sitting after it. */
const recordedS = 8;

let browser: Browser;
let mirror: Page;
test.beforeEach(async ({ baseURL }) => {
  browser = await launchWithCamera(numberedCameraFile(film));
  const context = await browser.newContext({
    baseURL: baseURL!,
    storageState: { cookies: [], origins: [] }, // A newcomer's, so that nothing is kept yet.
    permissions: ['camera'],
    serviceWorkers: 'block',
    bypassCSP: true,
    viewport: { width: 1440, height: 900 },
  });
  await replayJoints(context, film);
  mirror = await context.newPage();
  await mirror.addInitScript(() => {
    const page = window as unknown as { tones: number };
    page.tones = 0;
    const { start } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (this: OscillatorNode, whenS?: number) {
      page.tones++;
      start.call(this, whenS);
    };
  });
});
test.afterEach(() => browser.close());

const tones = () => mirror.evaluate(() => (window as unknown as { tones: number }).tones);
const words = () => mirror.locator('.knee-bar-words');

/** The example's review with a narrow lane, so that the film's knee leaves it, and from there the mirror. */
async function openMirror() {
  await mirror.goto('./');
  // In a browser that was just started the letters come late, and move what is pressed.
  await mirror.evaluate(() => document.fonts.ready.then(() => undefined));
  await mirror.getByRole('button', { name: 'Show me an example' }).click();
  await mirror.getByRole('button', { name: 'Change limits' }).click();
  const inward = mirror.getByRole('textbox', { name: 'Inward, degrees' });
  await inward.fill('2');
  await inward.press('Enter');
  await mirror.getByRole('tab', { name: 'Cues' }).click();
  await mirror.getByRole('button', { name: 'Live mirror' }).click();
  await expect(mirror.getByText('The lane is 2° inward and 10° outward.')).toBeVisible();
  await mirror.getByRole('button', { name: 'Open the camera' }).click();
  await expect
    .poll(
      () => mirror.getByLabel('What the camera sees').evaluate((one: HTMLVideoElement) => one.videoWidth),
      {
        timeout: onceMs,
      },
    )
    .toBe(540);
}

/** That there is room to keep something, and nothing yet. */
const emptyShelf = 'lock: ready';

/** Every file, record, key and cache that the page's origin holds. */
function stored(): Promise<string[]> {
  return mirror.evaluate(async () => {
    interface Place {
      indexedDB: IDBFactory;
      getDirectory(): Promise<FileSystemDirectoryHandle>;
    }
    const { storageBuckets } = navigator as unknown as {
      storageBuckets: { keys(): Promise<string[]>; open(name: string): Promise<Place> };
    };
    const places: Place[] = [{ indexedDB, getDirectory: () => navigator.storage.getDirectory() }];
    for (const name of await storageBuckets.keys()) places.push(await storageBuckets.open(name));
    const found: string[] = [];
    const folders = await Promise.all(places.map((place) => place.getDirectory()));
    for (let folder = folders.pop(); folder !== undefined; folder = folders.pop()) {
      for await (const entry of folder.values()) {
        if (entry.kind === 'directory') folders.push(entry as FileSystemDirectoryHandle);
        else found.push(`file ${entry.name}`);
      }
    }
    for (const place of places)
      for (const { name } of await place.indexedDB.databases()) {
        const database = await new Promise<IDBDatabase>((resolve) => {
          const request = place.indexedDB.open(name!);
          request.onsuccess = () => resolve(request.result);
        });
        for (const table of database.objectStoreNames) {
          const request = database.transaction(table).objectStore(table).getAllKeys();
          const keys = await new Promise<IDBValidKey[]>(
            (resolve) => (request.onsuccess = () => resolve(request.result)),
          );
          for (const key of keys) found.push(`${table}: ${String(key)}`);
        }
        database.close();
      }
    return [...found, ...Object.keys(localStorage), ...(await caches.keys())];
  });
}

/** Height over width of the longest upright run of white pixels that is drawn over the picture; 0 where there is none. */
function plumbLine(): Promise<number> {
  return mirror.locator('.live-picture canvas').evaluate((canvas: HTMLCanvasElement) => {
    const { width, height } = canvas;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, width, height);
    const isWhite = (x: number, y: number) => {
      const [red, green, blue, alpha] = data.slice(4 * (y * width + x), 4 * (y * width + x) + 4);
      return Math.min(red!, green!, blue!, alpha!) > 240;
    };
    let longest = 0;
    for (let x = 0; x < width; x++) {
      let run = 0;
      for (let y = 0; y < height; y++) {
        run = isWhite(x, y) ? run + 1 : 0;
        longest = Math.max(longest, run);
      }
    }
    return longest / height;
  });
}

test('the mirror shows the leg, a plumb line and the knee’s lane, and plays a tone only if asked to', async () => {
  await openMirror();
  await expect(words()).toHaveText('In the lane', { timeout: onceMs });
  // From foot to hip a person takes up a good third of this picture's height.
  await expect.poll(plumbLine, { timeout: onceMs }).toBeGreaterThan(0.25);
  const widthOf = async (selector: string) => (await mirror.locator(selector).boundingBox())!.width;
  // The bar shows 35 degrees to either side.
  expect((await widthOf('.knee-bar-lane')) / (await widthOf('.knee-bar-track'))).toBeCloseTo(
    (2 + 10) / 70,
    2,
  );
  const places = new Set<string>();
  await expect
    .poll(
      async () => {
        const dot = mirror.locator('.knee-bar-dot');
        if ((await dot.count()) > 0) places.add((await dot.getAttribute('style'))!);
        return places.size;
      },
      { timeout: onceMs },
    )
    .toBeGreaterThan(5);
  await expect(words()).toHaveText('The knee is inward of its lane', { timeout: onceMs });
  expect(await tones()).toBe(0);

  await mirror.getByRole('button', { name: 'Tone when the knee leaves its lane' }).click();
  await expect.poll(tones, { timeout: onceMs }).toBeGreaterThan(0);
  await mirror.getByRole('button', { name: 'Tone is on' }).click();
  const rung = await tones();
  await expect(words()).toHaveText('In the lane', { timeout: onceMs });
  await expect(words()).toHaveText('The knee is inward of its lane', { timeout: onceMs });
  expect(await tones()).toBe(rung);
  expect(await seriousFaults(mirror)).toEqual([]);
});

test('nothing that the mirror saw is stored', async () => {
  await openMirror();
  await expect(words()).toHaveText('In the lane', { timeout: onceMs });
  await mirror.getByRole('button', { name: 'Close the mirror' }).click();
  await expect(mirror.getByRole('grid', { name: 'Repetitions' })).toBeVisible();
  expect(await stored()).toEqual([emptyShelf]);
});

test('what is recorded on request stays in memory, to be measured, saved or dropped', async () => {
  test.setTimeout(180_000);
  await openMirror();
  await expect(words()).toHaveText('In the lane', { timeout: onceMs });
  const close = mirror.getByRole('button', { name: 'Close the mirror' });
  const record = mirror.getByRole('button', { name: 'Record', exact: true });
  const stop = mirror.getByRole('button', { name: /^Stop recording/ });
  await record.click();
  await expect(close).toBeDisabled();
  await expect(stop).toContainText('2.0 s', { timeout: onceMs });
  await stop.click();
  await expect(mirror.getByText(/^Recorded: /)).toBeVisible();
  expect(await seriousFaults(mirror)).toEqual([]);
  const download = mirror.waitForEvent('download');
  await mirror.getByRole('button', { name: 'Save as a file' }).click();
  expect((await download).suggestedFilename()).toMatch(/^practice-[\d-]+\.(webm|mp4)$/);
  await mirror.getByRole('button', { name: 'Delete it' }).click();
  await expect(close).toBeEnabled();

  await expect(words()).toHaveText('The knee is inward of its lane', { timeout: onceMs });
  await record.click();
  // To the end of the repetition that leaves the lane, and once through the next.
  await expect(stop).toContainText(`${recordedS}.0 s`, { timeout: 2 * onceMs });
  await stop.click();
  await mirror.getByRole('button', { name: 'Measure recording' }).click();
  await mirror.getByRole('button', { name: /How closely to look/ }).click();
  await mirror.getByRole('option', { name: /lite/ }).click();
  await mirror.getByRole('button', { name: 'Measure this video' }).click();
  const table = mirror.getByRole('grid', { name: 'Repetitions' });
  await expect(table.getByRole('row').filter({ hasText: 'inward' }).first()).toBeVisible({ timeout: 90_000 });
  expect(await stored()).toEqual([emptyShelf]);
});
