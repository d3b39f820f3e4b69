import { chromium } from '@playwright/test';
import type { BenchRequest, MeasuredRecording, MeasureRequest } from '../../headless/headlessPage';
import type { Outcome, Progress, RecordedTimes } from '../../headless/headlessPage';
import { CommandProblem } from './commandProblem';
import { ensureBuilt } from './ensureBuilt';
import { browserSwitches, findBrowser } from './findBrowser';
import { serveBuild } from './serveBuild';

/** The built headless page in a browser without a screen. */
export interface Headless {
  /** @throws CommandProblem  with the page's sentence where the file can't be used */
  measure(videoPath: string, request: MeasureRequest): Promise<MeasuredRecording>;
  timeRecorded(videoPath: string, request: BenchRequest): Promise<RecordedTimes>;
  close(): Promise<void>;
}

/** Builds where needed, serves the build, and opens the headless page. */
export async function openHeadless(
  onProgress: (progress: Progress) => void = () => undefined,
): Promise<Headless> {
  const executablePath = findBrowser();
  ensureBuilt();
  const server = await serveBuild();
  const browser = await chromium.launch({ executablePath, args: browserSwitches });
  const page = await browser.newPage();
  const thrown: Error[] = [];
  page.on('pageerror', (error) => thrown.push(error));
  await page.exposeFunction('reportProgress', onProgress);
  await page.goto(new URL('headless/headless.html', server.url).href);
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
