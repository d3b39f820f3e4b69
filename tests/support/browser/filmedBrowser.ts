import { existsSync, mkdirSync, renameSync } from 'node:fs';
import { dirname } from 'node:path';
import { chromium, type Browser, type Page } from '@playwright/test';
import { cameraSwitches } from '#tools/commands/tools/cameraSwitches';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { writeCameraFile } from '#tools/commands/tools/writeCameraFile';
import { fixture, openHeadlessPage } from './headlessPage';

/**
 * The camera file of a fixture clip, written once a test run.
 *
 * @param page  any page of a browser that reads videos; it shows the headless page afterwards
 */
export async function cameraFileOf(page: Page, clip: string): Promise<string> {
  const path = `${projectRoot}test-results/cameras/${process.ppid}-${clip}.mjpeg`;
  if (existsSync(path)) return path;
  mkdirSync(dirname(path), { recursive: true });
  await openHeadlessPage(page, fixture(clip));
  await writeCameraFile(page, `${path}.part`);
  renameSync(`${path}.part`, path);
  return path;
}

/** A browser whose camera shows a file of pictures, over and over. */
export function launchWithCamera(picturesPath: string): Promise<Browser> {
  const switches = cameraSwitches(picturesPath);
  return chromium.launch({ executablePath: findBrowser(), args: [...browserSwitches, ...switches] });
}
