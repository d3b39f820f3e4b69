import { readFileSync } from 'node:fs';
import { chromium, type Page } from '@playwright/test';
import { median } from 'd3-array';
import { openKeptSessions } from './openKeptSessions';
import type {} from '../../headless/storage';
import { measure } from '#core/measurement/measure';
import { mapMeasures } from '#core/measures/measures';
import { defaultLimits, type Limits } from '#core/protocol/limits';
import { buildRecording } from '#documents/recording/buildRecording';
import { parseRecording } from '#documents/recording/parseRecording';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { recordingTrack } from '#documents/recording/recordingTrack';
import { ensureBuilt } from './ensureBuilt';
import { browserSwitches, findBrowser } from './findBrowser';
import { repeatTrack } from './repeatTrack';
import { serveBuild } from './serveBuild';
import { startOf } from './startOf';
import { timeRejudging } from './timeRejudging';

/** How fast the review is; medians. */
export interface ReviewFigures {
  /** Judging this many repetitions against a moved limit. */
  rejudge1000Ms: number;
  /** The same where every other measure has its limits too. */
  rejudgeAll1000Ms: number;
  rejudged: number;
  /** From the key that opens a recording with this many repetitions to its first picture on the screen. */
  openRecordingMs: number;
  openedRepetitions: number;
  /** From the key to the next frame on the screen. */
  frameStepMs: number;
  /** From the key to the next repetition of the table on the screen. */
  rowStepMs: number;
  /** From the key that moves a limit to all repetitions judged by it on the screen. */
  limitStepMs: number;
  /** Growth of the page's script memory from the 5th to the 20th opening, after garbage collection. */
  memoryGrowthPct: number;
}

const repetitions = 75;
const openings = 20;
/** From here on nothing is created for the first time. */
const settledOpening = 5;
const steps = 25;

/** @param sessionPath  a recording document whose joints are repeated until there are enough repetitions */
export async function benchReview(recordingPath: string): Promise<ReviewFigures> {
  const example = parseRecording(readFileSync(recordingPath, 'utf8'));
  const { rejudgeMs, repetitions: rejudged } = timeRejudging(example, defaultLimits);
  const { rejudgeMs: rejudgeAllMs } = timeRejudging(example, everyLimit());
  const long = longRecording(example);
  ensureBuilt();
  const server = await serveBuild();
  const browser = await chromium.launch({ executablePath: findBrowser(), args: [...browserSwitches] });
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await saveRecordingDocument(page, server.url, long);
    await page.goto(server.url);
    await openKeptSessions(page);
    const openedMs: number[] = [];
    const heldBytes: number[] = [];
    let steppedMs: number[] = [];
    let rowsMs: number[] = [];
    let limitsMs: number[] = [];
    for (let opening = 0; opening < openings; opening++) {
      openedMs.push(await timeOpening(page));
      if (opening === 0) {
        steppedMs = await timeSteps(page);
        await page.getByRole('grid', { name: 'Repetitions' }).getByRole('row', { selected: true }).focus();
        await page.keyboard.press('Home');
        rowsMs = await timeKeys(page, ['ArrowDown'], '[role="grid"] [aria-selected="true"]');
        await page.getByRole('button', { name: 'Change limits' }).click();
        await page.getByRole('slider', { name: 'Inward' }).focus();
        limitsMs = await timeKeys(page, ['ArrowLeft', 'ArrowRight'], '.limit-fill');
        await page.getByRole('button', { name: 'Default', exact: true }).click();
      }
      await page.getByRole('button', { name: 'Back to kept sessions' }).click();
      heldBytes.push(await heldAfterCollecting(page));
    }
    const before = heldBytes[settledOpening - 1]!;
    return {
      rejudge1000Ms: rejudgeMs,
      rejudgeAll1000Ms: rejudgeAllMs,
      rejudged,
      openRecordingMs: median(openedMs)!,
      openedRepetitions: long.derived.repetitions.length,
      frameStepMs: median(steppedMs)!,
      rowStepMs: median(rowsMs)!,
      limitStepMs: median(limitsMs)!,
      memoryGrowthPct: (100 * (heldBytes.at(-1)! - before)) / before,
    };
  } finally {
    await browser.close();
    await server.close();
  }
}

/** For every measure those that are proposed at first. */
function everyLimit(): Limits {
  return mapMeasures((_, { limits: { least, most } }) => ({ least: least.first, most: most.first }));
}

function longRecording(example: RecordingDocument): RecordingDocument {
  const times = Math.ceil(repetitions / example.derived.repetitions.length);
  const track = repeatTrack(recordingTrack(example), times);
  return buildRecording({
    ...example,
    createdAt: new Date(example.createdAt),
    model: example.observed.model,
    track,
    measurement: measure(track, example.setup),
  });
}

async function saveRecordingDocument(
  page: Page,
  baseUrl: string,
  recording: RecordingDocument,
): Promise<void> {
  await page.goto(new URL('tools/headless/storage.html', baseUrl).href);
  await page.waitForFunction(() => 'storagePage' in window);
  const asked = { kept: recording, start: startOf(recording) };
  await page.evaluate(async ({ kept, start }) => {
    const { repository } = await window.storagePage.openRepository();
    const set = await repository.beginSet(start, () => undefined);
    await set.video?.write(await (await fetch('../../example/example.mp4')).blob());
    await set.endVideo();
    await set.finish(kept, 'done', null);
    repository.close();
  }, asked);
}

/** From Enter on the set's row to the first picture of its video, ms. */
async function timeOpening(page: Page): Promise<number> {
  const set = page.getByRole('grid', { name: 'Sets' }).getByRole('row').first();
  await set.filter({ hasText: '%' }).waitFor();
  await set.focus();
  await page.evaluate(() => {
    const state = window as unknown as { openedMs?: number };
    delete state.openedMs;
    window.addEventListener(
      'keydown',
      () => {
        const fromMs = performance.now();
        // No function here has a name: the runner would call a helper of its own that the page does not know.
        const timer = setInterval(() => {
          const video = document.querySelector('video');
          if ((video?.readyState ?? 0) < HTMLMediaElement.HAVE_CURRENT_DATA) return;
          clearInterval(timer);
          requestAnimationFrame((nowMs) => (state.openedMs = nowMs - fromMs));
        }, 4);
      },
      { once: true, capture: true },
    );
  });
  await page.keyboard.press('Enter');
  await page.waitForFunction(() => 'openedMs' in window, undefined, { timeout: 60_000 });
  return page.evaluate(() => (window as unknown as { openedMs: number }).openedMs);
}

/** From the key to the picture, one frame at a time, ms. */
async function timeSteps(page: Page): Promise<number[]> {
  return page.evaluate(async (count) => {
    const video = document.querySelector('video')!;
    const times: number[] = [];
    for (let step = 0; step < count; step++) {
      const fromMs = performance.now();
      const shown = new Promise<number>((resolve) =>
        video.requestVideoFrameCallback((nowMs) => resolve(nowMs - fromMs)),
      );
      document.body.dispatchEvent(new KeyboardEvent('keydown', { key: 'ArrowRight', bubbles: true }));
      times.push(await shown);
    }
    return times;
  }, steps);
}

/**
 * From each press of a key to the next screen update, ms.
 *
 * @param keys     pressed in turn
 * @param watched  selector of what every press changes
 */
async function timeKeys(page: Page, keys: readonly string[], watched: string): Promise<number[]> {
  const times: number[] = [];
  for (let step = 0; step < steps; step++) {
    await page.evaluate((css) => {
      const state = window as unknown as { paintedMs?: number };
      delete state.paintedMs;
      const before = document.querySelector(css)?.outerHTML;
      window.addEventListener(
        'keydown',
        ({ timeStamp }) => {
          const timer = setInterval(() => {
            if (document.querySelector(css)?.outerHTML === before) return;
            clearInterval(timer);
            requestAnimationFrame(() => {
              const { port1, port2 } = new MessageChannel();
              port1.onmessage = () => (state.paintedMs = performance.now() - timeStamp);
              port2.postMessage(null);
            });
          }, 4);
        },
        { once: true, capture: true },
      );
    }, watched);
    await page.keyboard.press(keys[step % keys.length]!);
    await page.waitForFunction(() => 'paintedMs' in window);
    times.push(await page.evaluate(() => (window as unknown as { paintedMs: number }).paintedMs));
  }
  return times;
}

async function heldAfterCollecting(page: Page): Promise<number> {
  const recording = await page.context().newCDPSession(page);
  await recording.send('HeapProfiler.collectGarbage');
  const { usedSize } = await recording.send('Runtime.getHeapUsage');
  await recording.detach();
  return usedSize;
}
