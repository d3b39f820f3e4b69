import { chromium } from '@playwright/test';
import {
  liveMarks,
  type BenchRequest,
  type CloserRequest,
  type CloserTimes,
  type LiveRequest,
  type LiveRun,
  type MeasuredRecording,
  type MeasureRequest,
  type Outcome,
  type Progress,
  type RecordedTimes,
} from '../../headless/headlessPage';
import { CommandProblem } from './commandProblem';
import { ensureBuilt } from './ensureBuilt';
import { browserSwitches, findBrowser } from './findBrowser';
import { longestTaskMs } from './longestTaskMs';
import { serveBuild } from './serveBuild';
import { writeCameraFile } from './writeCameraFile';

/** The built headless page in a browser without a screen. */
export interface Headless {
  /** @throws CommandProblem  with the page's sentence where the file can't be used */
  measure(videoPath: string, request: MeasureRequest): Promise<MeasuredRecording>;
  timeRecorded(videoPath: string, request: BenchRequest): Promise<RecordedTimes>;
  timeCloser(videoPath: string, request: CloserRequest): Promise<CloserTimes>;
  /** Writes a video as a file that a browser can show as its camera. */
  writeCameraFile(videoPath: string, picturesPath: string): Promise<void>;
  /** Counts along with the browser's camera, and reports the longest task of the page's main thread meanwhile. */
  runLive(request: LiveRequest): Promise<LiveRun & { longestTaskMs: number }>;
  close(): Promise<void>;
}

/**
 * Builds where needed, serves the build, and opens the headless page.
 *
 * @param moreSwitches  for the browser, such as those that give it a camera
 */
export async function openHeadless(
  onProgress: (progress: Progress) => void = () => undefined,
  moreSwitches: readonly string[] = [],
): Promise<Headless> {
  const executablePath = findBrowser();
  ensureBuilt();
  const server = await serveBuild();
  const browser = await chromium.launch({ executablePath, args: [...browserSwitches, ...moreSwitches] });
  const page = await browser.newPage({ permissions: ['camera'] });
  const thrown: Error[] = [];
  page.on('pageerror', (error) => thrown.push(error));
  await page.exposeFunction('reportProgress', onProgress);
  await page.goto(new URL('tools/headless/headless.html', server.url).href);
  await page
    .waitForFunction(() => 'headlessPage' in window, undefined, { timeout: 20_000 })
    .catch(() => {
      throw thrown[0] ?? new Error('The headless page did not start.');
    });

  const choose = (videoPath: string) => page.setInputFiles('#video', videoPath);
  return {
    async measure(videoPath, request) {
      await choose(videoPath);
      return unwrap(await page.evaluate((asked) => window.headlessPage.measureChosenFile(asked), request));
    },
    async timeRecorded(videoPath, request) {
      await choose(videoPath);
      return unwrap(await page.evaluate((asked) => window.headlessPage.timeRecorded(asked), request));
    },
    async timeCloser(videoPath, request) {
      await choose(videoPath);
      return unwrap(await page.evaluate((asked) => window.headlessPage.timeCloser(asked), request));
    },
    async writeCameraFile(videoPath, picturesPath) {
      await choose(videoPath);
      await writeCameraFile(page, picturesPath);
    },
    async runLive(request) {
      await browser.startTracing(page, { categories: ['toplevel', 'blink.user_timing'] });
      const outcome = await page.evaluate((asked) => window.headlessPage.runLive(asked), request);
      const trace = (await browser.stopTracing()).toString();
      return { ...unwrap(outcome), longestTaskMs: longestTaskMs(trace, liveMarks.from, liveMarks.to) };
    },
    async close() {
      await browser.close();
      await server.close();
    },
  };
}

function unwrap<Value>(outcome: Outcome<Value>): Value {
  if (outcome.problem !== null) throw new CommandProblem(outcome.problem);
  return outcome.value;
}
