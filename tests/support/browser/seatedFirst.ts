import { appendFileSync, existsSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { cameraFileOf } from './filmedBrowser';

/** The pace at which Chromium shows the pictures of a camera file, Hz. */
const rateHz = 30;
const endOfPicture = Buffer.from([0xff, 0xd9]);

/**
 * The camera file of a fixture clip whose first picture is held for a while: a person waiting for the signal
 * to begin.
 *
 * @param page  any page of a browser that reads videos; it shows the headless page afterwards
 */
export async function seatedFirst(page: Page, clip: string, stillS: number): Promise<string> {
  const moving = await cameraFileOf(page, clip);
  const path = moving.replace('.mjpeg', `-after-${stillS}.mjpeg`);
  if (existsSync(path)) return path;
  const pictures = readFileSync(moving);
  const first = pictures.subarray(0, pictures.indexOf(endOfPicture) + endOfPicture.length);
  const second = Buffer.concat(Array.from({ length: rateHz }, () => first));
  writeFileSync(`${path}.part`, '');
  for (let i = 0; i < stillS; i++) appendFileSync(`${path}.part`, second);
  appendFileSync(`${path}.part`, pictures);
  renameSync(`${path}.part`, path);
  return path;
}
