import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { defaultLimits } from '#core/protocol/limits';
import { bundle } from '#tools/commands/tools/replay/bundle';
import type { MeasuredRecording, MeasureRequest } from '#tools/headless/headlessPage';

export const fixture = (name: string) => fileURLToPath(new URL(`../../../fixtures/${name}`, import.meta.url));

/** The second repetition of fixtures/short.mp4, with the quiet sitting around it, seconds. */
export const oneRepetition = { fromS: 4.5, toS: 9.3 };

const request: MeasureRequest = {
  setup: { task: 'split-stance-sit-to-stand', side: 'right' },
  limits: defaultLimits,
  model: 'lite',
  note: '',
  look: 'usual',
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

/** Adds a script of this folder, which puts itself into the page by its name. */
async function addScript(page: Page, name: string): Promise<void> {
  await page.addScriptTag({
    content: await bundle(new URL(`./${name}.ts`, import.meta.url)),
    type: 'module',
  });
  await page.waitForFunction((added) => added in window, name);
}

/** Measures the chosen file with the smallest model; rejects where the page itself fails. */
export async function outcomeOf(
  page: Page,
  setup: Partial<MeasureRequest['setup']> = {},
  look = request.look,
) {
  const asked = { ...request, look, setup: { ...request.setup, ...setup } };
  return page.evaluate((request) => window.headlessPage.measureChosenFile(request), asked);
}

/** The recording of a file that can be measured. */
export async function measured(
  page: Page,
  setup: Partial<MeasureRequest['setup']> = {},
  look = request.look,
): Promise<MeasuredRecording> {
  const { value, problem } = await outcomeOf(page, setup, look);
  if (value === null) throw new Error(`The page says: ${problem}`);
  return value;
}

/** Complete repetitions of a recording. */
export function completeRepetitions({ recording }: MeasuredRecording) {
  return recording.derived.repetitions.filter(({ completeness }) => completeness === 'complete');
}
