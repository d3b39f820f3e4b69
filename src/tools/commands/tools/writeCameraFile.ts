import { closeSync, openSync, writeSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { CommandProblem } from './commandProblem';

/** The pace at which Chromium shows the pictures of a camera file, Hz. */
const rateHz = 30;

/**
 * Writes a video as a file that Chromium can show as a camera: JPEG pictures one after the other, named .mjpeg.
 *
 * @param page  the headless page, with the video chosen
 * @throws CommandProblem  with the page's sentence where the video can't be used
 */
export async function writeCameraFile(page: Page, picturesPath: string): Promise<void> {
  const file = openSync(picturesPath, 'w');
  try {
    await page.exposeFunction('takeJpeg', (base64: string, times: number) => {
      const bytes = Buffer.from(base64, 'base64');
      for (let i = 0; i < times; i++) writeSync(file, bytes);
    });
    const { problem } = await page.evaluate((rate) => window.headlessPage.giveJpegs(rate), rateHz);
    if (problem !== null) throw new CommandProblem(problem);
  } finally {
    closeSync(file);
  }
}
