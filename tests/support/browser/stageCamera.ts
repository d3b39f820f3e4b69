import type { BrowserContext } from '@playwright/test';
import { securityHeaders } from '#tools/build/securityHeaders';
import { bundle } from '#tools/commands/tools/replay/bundle';
import { replayJoints } from '#tools/commands/tools/replay/replayJoints';
import { filmStage } from './stagedFilm';

/**
 * Gives all pages of a context a camera that shows a film whose joints are known, part by part as the guide asks for
 * it. Its pages take scripts of others: bypassCSP, and no service worker.
 *
 * @param tookMs  how long the search for joints takes for each picture, ms
 */
export async function stageCamera(context: BrowserContext, tookMs = 0): Promise<void> {
  const { track, frames } = filmStage();
  await replayJoints(context, track, tookMs);
  const worker = await bundle(new URL('./stagedCameraWorker.ts', import.meta.url));
  const body = `globalThis.stagedFrames = ${JSON.stringify(frames)};\n${worker}`;
  const headers = { ...securityHeaders };
  await context.route('**/stagedCamera.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', headers, body }),
  );
  await context.addInitScript({ content: await bundle(new URL('./stagedCameraPage.ts', import.meta.url)) });
}
