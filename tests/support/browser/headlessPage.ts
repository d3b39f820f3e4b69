import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { build } from 'vite';
import type { MeasuredRecording, MeasureRequest } from '#tools/headless/headlessPage';
import { defaultLimits } from '#core/protocol/limits';

export const fixture = (name: string) => fileURLToPath(new URL(`../../../fixtures/${name}`, import.meta.url));

const request: MeasureRequest = {
  setup: { task: 'split-stance-sit-to-stand', side: 'right' },
  limits: defaultLimits,
  model: 'lite',
  note: '',
};

/** Opens the headless page and chooses a file. */
export async function openHeadlessPage(page: Page, path: string): Promise<void> {
  await page.goto('tools/headless/headless.html');
  await page.waitForFunction(() => 'headlessPage' in window);
  await page.setInputFiles('#video', path);
}

let makerSource: Promise<string> | undefined;

/** Adds the tools that make odd videos out of the chosen one. */
export async function addVideoMaker(page: Page): Promise<void> {
  makerSource ??= bundleVideoMaker();
  await page.addScriptTag({ content: await makerSource, type: 'module' });
  await page.waitForFunction(() => 'videoMaker' in window);
}

async function bundleVideoMaker(): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    build: {
      write: false,
      minify: false,
      rolldownOptions: { input: fileURLToPath(new URL('./videoMaker.ts', import.meta.url)) },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (first === undefined || !('output' in first)) throw new Error('The video maker could not be bundled.');
  return first.output[0].code;
}

/** Measures the chosen file with the smallest model; rejects where the page itself fails. */
export async function outcomeOf(page: Page, setup: Partial<MeasureRequest['setup']> = {}) {
  const asked = { ...request, setup: { ...request.setup, ...setup } };
  return page.evaluate((request) => window.headlessPage.measureChosenFile(request), asked);
}

/** The recording of a file that can be measured. */
export async function measured(
  page: Page,
  setup: Partial<MeasureRequest['setup']> = {},
): Promise<MeasuredRecording> {
  const { value, problem } = await outcomeOf(page, setup);
  if (value === null) throw new Error(`The page says: ${problem}`);
  return value;
}

/** Complete repetitions of a recording. */
export function completeRepetitions({ recording }: MeasuredRecording) {
  return recording.derived.repetitions.filter(({ completeness }) => completeness === 'complete');
}
