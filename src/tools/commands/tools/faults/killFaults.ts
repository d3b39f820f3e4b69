import type { Page } from '@playwright/test';
import { median } from 'd3-array';
import {
  beginClock,
  findClock,
  openStoragePage,
  recordedSize,
  secondsLost,
} from '../../../../../tests/support/browser/recordedClock';
import { startOf } from '../startOf';
import type { FaultDevice } from './faultDevice';
import type { Fault } from './runFault';

const kills = 20;
/** No more of a recording may be lost, s. */
const mostLostS = 2;
/** Moments at which the tab ends, ms from the beginning: evenly spread over two pieces of the video. */
const killedAfterMs = (kill: number) => 2000 + (kill * 2000) / kills;

/** Ends a tab without a word: every second one crashes, the others are closed. */
async function kill(page: Page, count: number): Promise<void> {
  if (count % 2 === 0) return page.close({ runBeforeUnload: false });
  const inspector = await page.context().newCDPSession(page);
  const crashed = page.waitForEvent('crash');
  void inspector.send('Page.crash').catch(() => undefined);
  await crashed;
}

/** What is missing of a set whose tab ended in the middle of it, s. */
async function secondsMissing(device: FaultDevice, count: number): Promise<number> {
  const start = { ...startOf(device.recordings[0]!), id: crypto.randomUUID() };
  const page = await device.context.newPage();
  await openStoragePage(page);
  await beginClock(page, {
    start: { ...start, widthPx: recordedSize.width, heightPx: recordedSize.height },
  });
  await page.waitForTimeout(killedAfterMs(count));
  await kill(page, count);
  const endMs = Date.now();
  const next = await device.context.newPage();
  await openStoragePage(next);
  const { lastPictureMs, lastRowMs } = await findClock(next);
  await next.evaluate(async (id) => {
    const { repository } = await window.storagePage.openRepository();
    await repository.dropInterrupted(id);
    repository.close();
  }, start.id);
  await next.close();
  await page.close().catch(() => undefined);
  return Math.max(secondsLost(lastPictureMs, endMs), secondsLost(lastRowMs, endMs));
}

/** How much of a set is lost where its tab ends. */
export const killFaults: readonly Fault[] = [
  {
    name: 'tab-killed-twenty-times-while-recording',
    says: /^At most \d\.\d s lost/,
    async put(device) {
      const lostS: number[] = [];
      for (let count = 0; count < kills; count++) lostS.push(await secondsMissing(device, count));
      const worst = Math.max(...lostS);
      if (!(worst < mostLostS)) throw new Error(`${worst.toFixed(2)} s were lost.`);
      return `At most ${worst.toFixed(1)} s lost, ${median(lostS)!.toFixed(1)} s in the middle one of ${kills}.`;
    },
  },
];
