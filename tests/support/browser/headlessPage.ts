import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { build } from 'vite';
import { defaultLimits } from '#core/protocol/limits';
import { pageSettings } from '#tools/build/pageSettings';
import type { MeasuredRecording, MeasureRequest } from '#tools/headless/headlessPage';

export const fixture = (name: string) => fileURLToPath(new URL(`../../../fixtures/${name}`, import.meta.url));

const request: MeasureRequest = {
  setup: { task: 'split-stance-sit-to-stand', side: 'right' },
  limits: defaultLimits,
  model: 'lite',
  note: '',
  isCloser: false,
};

/** Opens the headless page and chooses a file. */
export async function openHeadlessPage(page: Page, path: string): Promise<void> {
  await page.goto('tools/headless/headless.html');
  await page.waitForFunction(() => 'headlessPage' in window);
  await page.setInputFiles('#video', path);
}

/** Adds the tools that make odd videos out of the chosen one. */
export const addVideoMaker = (page: Page) => addScript(page, 'videoMaker');

/** Adds what reads pictures out of videos. */
export const addPictureReader = (page: Page) => addScript(page, 'pictureReader');

const sources = new Map<string, Promise<string>>();

/** Adds a script of this folder, which puts itself into the page by its name. */
async function addScript(page: Page, name: string): Promise<void> {
  const source = sources.get(name) ?? bundle(name);
  sources.set(name, source);
  await page.addScriptTag({ content: await source, type: 'module' });
  await page.waitForFunction((added) => added in window, name);
}

async function bundle(name: string): Promise<string> {
  const result = await build({
    configFile: false,
    logLevel: 'silent',
    resolve: pageSettings.resolve ?? {},
    build: {
      write: false,
      minify: false,
      rolldownOptions: { input: fileURLToPath(new URL(`./${name}.ts`, import.meta.url)) },
    },
  });
  const [first] = Array.isArray(result) ? result : [result];
  if (first === undefined || !('output' in first)) throw new Error(`${name}.ts could not be bundled.`);
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
