import { chromium, expect, test, type Browser, type Page } from '@playwright/test';
import { defaultLimits } from '#core/protocol/limits';
import { decideLive, leastFullFps } from '#device/live/decideLive';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import type { LiveRequest } from '#tools/headless/headlessPage';
import { cameraFileOf, launchWithCamera } from '../../support/browser/filmedBrowser';
import { filmSitToStands, numberedCameraFile } from '../../support/browser/numberedFilm';

/** One time through the clip of two repetitions and the pause to the next, ms. */
const onceMs = 10_500;
/** The goal for a spoken count is half a second; other programs may take the processor meanwhile, ms. */
const longestDelayMs = 2000;

/** Two repetitions whose joints are known, for what does not need the network; a little longer than the clip. */
const film = filmSitToStands([4, 14]);

const request: LiveRequest = {
  setup: { task: 'split-stance-sit-to-stand', side: 'right' },
  limits: defaultLimits,
  model: 'lite',
  forMs: onceMs,
  awaitVerdicts: 0,
  bareFrames: 0,
};

const wayOut = 'Or record with the device’s own camera app and open the file here.';

function runLive(page: Page, wishes: Partial<LiveRequest> = {}) {
  return page.evaluate((asked) => window.headlessPage.runLive(asked), { ...request, ...wishes });
}

/** Opens the headless page in a browser of its own; it may use the camera. */
async function openIn(browser: Browser, address: string, before?: (page: Page) => Promise<unknown>) {
  const page = await browser.newPage({ permissions: ['camera'] });
  await before?.(page);
  await page.goto(new URL('tools/headless/headless.html', address).href);
  await page.waitForFunction(() => 'headlessPage' in window);
  return page;
}

test.describe('a camera that cannot be used is explained in a sentence with a way out', () => {
  test('refused', async ({ baseURL }) => {
    const args = [...browserSwitches, '--use-fake-device-for-media-stream'];
    const browser = await chromium.launch({ executablePath: findBrowser(), args });
    try {
      const filmed = await openIn(browser, baseURL!);
      await filmed.context().clearPermissions();
      const { problem } = await runLive(filmed);
      expect(problem).toMatch(/^The camera was not allowed\. Allow it for this page/);
      expect(problem).toContain(wayOut);
    } finally {
      await browser.close();
    }
  });

  test('missing', async ({ baseURL, context, page }) => {
    await context.grantPermissions(['camera']);
    await page.goto(new URL('tools/headless/headless.html', baseURL).href);
    await page.waitForFunction(() => 'headlessPage' in window);
    const { problem } = await runLive(page);
    expect(problem).toMatch(/^No camera was found\. Plug one in/);
    expect(problem).toContain(wayOut);
  });

  test('on an insecure page', async ({ baseURL, page }) => {
    // The same server by an address that browsers do not take for this device's own.
    await page.goto(new URL('tools/headless/headless.html', baseURL!.replace('127.0.0.1', '0.0.0.0')).href);
    await page.waitForFunction(() => 'headlessPage' in window);
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    const { problem } = await runLive(page);
    expect(problem).toMatch(/^Browsers give the camera to secure pages only\. .*https:/);
    expect(problem).toContain(wayOut);
  });

  test('taken away while it runs', async ({ baseURL }) => {
    const browser = await launchWithCamera(numberedCameraFile(film));
    try {
      const filmed = await openIn(browser, baseURL!, (page) => replayJoints(page, film));
      const running = runLive(filmed, { forMs: 60_000 });
      await filmed.waitForTimeout(4000); // Warmed up, and counting.
      await filmed.context().clearPermissions();
      const { problem } = await running;
      expect(problem).toMatch(/^The camera has stopped: it was unplugged/);
      expect(problem).toContain(wayOut);
    } finally {
      await browser.close();
    }
  });
});

test.describe('counting along with the camera', () => {
  type Way = [
    name: string,
    tag: string[],
    pictures: (page: Page) => Promise<string>,
    before: (page: Page) => Promise<unknown>,
  ];
  const ways: Way[] = [
    [
      'by the network, straight from the camera',
      // The pictures come in real time, and each waits for the network: it needs both cores.
      ['@alone'],
      (page) => cameraFileOf(page, 'short.mp4'),
      () => Promise.resolve(),
    ],
    [
      'with known joints, through a video element',
      [],
      () => Promise.resolve(numberedCameraFile(film)),
      async (page) => {
        await replayJoints(page, film);
        await page.addInitScript(() => Reflect.deleteProperty(window, 'MediaStreamTrackProcessor'));
      },
    ],
  ];
  for (const [way, tag, pictures, before] of ways) {
    test(
      `counts and judges each repetition that the review finds in the same frames once, ${way}`,
      { tag },
      async ({ baseURL, page }) => {
        const browser = await launchWithCamera(await pictures(page));
        try {
          const filmed = await openIn(browser, baseURL!, before);
          const { value: run, problem } = await runLive(filmed, { awaitVerdicts: 2 });
          expect(problem).toBeNull();
          expect([run!.widthPx, run!.heightPx]).toEqual([540, 960]);
          expect(run!.counts.map(({ count }) => count)).toEqual([1, 2]);
          expect(run!.reviewedCount).toBe(2);
          expect(run!.verdicts).toHaveLength(2);
          expect(run!.unmeasured).toEqual([]);
          run!.counts.forEach(({ atMs }, i) => {
            expect(atMs - run!.reviewedEndsMs[i]!).toBeLessThan(longestDelayMs);
          });
        } finally {
          await browser.close();
        }
      },
    );
  }

  test('with the model that this device is fast enough for', async ({ baseURL }) => {
    const browser = await launchWithCamera(numberedCameraFile(film));
    try {
      // Too slow for the full model, so that the lite one is tried as well.
      const filmed = await openIn(browser, baseURL!, (page) => replayJoints(page, film, 120));
      const { value: run } = await runLive(filmed, { model: null, forMs: 1500 });
      const { decision, fullFps, liteFps, hasPerson } = run!.check!;
      expect(fullFps).toBeGreaterThan(0);
      expect(fullFps).toBeLessThan(leastFullFps);
      expect(hasPerson).toBe(true);
      expect(decision).toEqual(decideLive(fullFps, liteFps));
      expect(liteFps).toBeGreaterThan(0);
    } finally {
      await browser.close();
    }
  });
});
