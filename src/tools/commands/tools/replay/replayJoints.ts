import type { BrowserContext, Page } from '@playwright/test';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { securityHeaders } from '#tools/build/securityHeaders';
import { bundle } from './bundle';

/** What the stand-in for the pose worker gives, and how long it takes for a picture, ms. */
export interface Replayed {
  timesMs: number[];
  xPx: number[];
  yPx: number[];
  score: number[];
  tookMs: number;
}

/**
 * Puts known joints in the place of the pose network: those of the frame whose number a picture shows, else those of
 * its time.
 *
 * @param tookMs  how long each picture takes, ms
 */
export async function replayJoints(
  where: Page | BrowserContext,
  { timesMs, xPx, yPx, score }: Pick<KeypointTrack, 'timesMs' | 'xPx' | 'yPx' | 'score'>,
  tookMs = 0,
): Promise<void> {
  const joints: Replayed = {
    timesMs: [...timesMs],
    xPx: [...xPx],
    yPx: [...yPx],
    score: [...score],
    tookMs,
  };
  const script = `globalThis.replayed = ${JSON.stringify(joints)};\n${await bundle(new URL('./replayWorker.ts', import.meta.url))}`;
  const headers = { ...securityHeaders };
  await where.route('**/poseWorker-*.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', headers, body: script }),
  );
}
