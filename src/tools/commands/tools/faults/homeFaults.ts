import type { Page } from '@playwright/test';
import type {} from '../../../../../tests/support/browser/stagedCameraPage';
import { stagedSize } from '../../../../../tests/support/browser/stagedFilm';
import type { Kept } from './faultDevice';
import {
  answerAndSave,
  beginSet,
  counted,
  finishSession,
  inPhase,
  keepInterrupted,
  newSets,
  toCamera,
} from './homeSet';
import { killWorker } from './killWorker';
import type { Fault } from './runFault';
import { shown } from './storageFaults';

/** Whether one set more is kept, with all of its repetitions, or one too many, and its video. */
export const hasWholeSet = (after: Kept, before: Kept) => {
  const [set, ...others] = newSets(after, before);
  return others.length === 0 && (set?.repetitions ?? 0) >= 2 && set!.hasVideo;
};

/** What the guide did and said, in order. */
interface Told {
  phases: string[];
  lines: string[];
}

/** How long the screen may take to say it, ms: what does not answer is waited for. */
const patienceMs = 40_000;

/** No more may be missing from a recorded set, ms. */
const longestGapMs = 2000;

/** Goes to the middle of a set. */
export async function toMiddle(...parts: Parameters<typeof beginSet>): Promise<Page> {
  const page = await beginSet(...parts);
  await counted(page, 1);
  return page;
}

/**
 * A fault in the middle of a set that the screen says something about, and that is over again before the set ends.
 *
 * @param end  ends the fault; left out where it ends by itself
 */
export async function inMiddle(
  page: Page,
  says: RegExp,
  begin: (page: Page) => Promise<unknown>,
  end: (page: Page) => Promise<unknown> = () => Promise.resolve(),
): Promise<string | null> {
  await begin(page);
  const sentence = await shown(page, says, patienceMs);
  await end(page);
  await finishSession(page);
  return sentence;
}

/** Faults of the camera, and of what works on its pictures, in the middle of a set at home. */
export const homeFaults: readonly Fault[] = [
  {
    name: 'camera-refused',
    says: /camera was not allowed.*Allow it for this page/,
    hasCamera: true,
    async put(device) {
      const page = await toCamera(device);
      await page.evaluate(() => void (window.stage.refuseWith = 'NotAllowedError'));
      await page.getByRole('button', { name: 'Switch the camera on' }).click();
      return shown(page, /not allowed/);
    },
  },
  {
    name: 'camera-taken-by-another',
    says: /in use.*Close other programs/,
    hasCamera: true,
    async put(device) {
      const page = await toCamera(device);
      await page.evaluate(() => void (window.stage.refuseWith = 'NotReadableError'));
      await page.getByRole('button', { name: 'Switch the camera on' }).click();
      return shown(page, /in use/);
    },
  },
  {
    name: 'camera-unplugged-in-a-set',
    says: /camera has stopped: it was unplugged.*is kept/,
    hasCamera: true,
    holds: (after, before) => newSets(after, before)[0]?.repetitions === 1,
    async put(device) {
      const page = await toMiddle(device);
      await page.evaluate(() => window.stage.unplug());
      const sentence = await shown(page, /camera has stopped: it was unplugged/);
      await page.getByRole('button', { name: 'End for today' }).click();
      await page.getByRole('button', { name: 'Answer a few questions' }).click();
      await answerAndSave(page);
      return sentence;
    },
  },
  {
    name: 'camera-frozen-in-a-set',
    says: /camera gives no pictures/,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const freeze = (isFrozen: boolean) => (page: Page) =>
        page.evaluate((frozen) => window.stage.change({ isFrozen: frozen }), isFrozen);
      return inMiddle(await toMiddle(device), /camera gives no pictures/, freeze(true), freeze(false));
    },
  },
  {
    name: 'camera-of-5-pictures-a-second',
    says: /not smooth enough/,
    hasCamera: true,
    async put(device) {
      const page = await toCamera(device);
      await page.evaluate(() => window.stage.change({ rateHz: 5 }));
      await page.getByRole('button', { name: 'Switch the camera on' }).click();
      await page.getByRole('button', { name: 'Begin' }).click();
      return shown(page, /not smooth enough/);
    },
  },
  {
    name: 'camera-of-120-pictures-a-second',
    says: null,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const page = await beginSet(device);
      await page.evaluate(() => window.stage.change({ rateHz: 120 }));
      await finishSession(page);
      return null;
    },
  },
  {
    name: 'picture-turned-in-a-set',
    says: /Turn it back/,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const { widthPx, heightPx } = stagedSize;
      const turn = (width: number, height: number) => (page: Page) =>
        page.evaluate((size) => window.stage.change(size), { widthPx: width, heightPx: height });
      return inMiddle(
        await toMiddle(device),
        /Turn it back/,
        turn(heightPx, widthPx),
        turn(widthPx, heightPx),
      );
    },
  },
  {
    name: 'pose-worker-killed-in-a-set',
    says: /no longer followed/,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      return inMiddle(await toMiddle(device), /no longer followed/, (page) => killWorker(page, 'poseWorker'));
    },
  },
  {
    name: 'counting-worker-killed-in-a-set',
    says: /Please count your repetitions yourself/,
    hasCamera: true,
    // The person goes on until they are told.
    holds: (after, before) => (newSets(after, before)[0]?.repetitions ?? 0) >= 2,
    async put(device) {
      return inMiddle(
        await toMiddle(device),
        /Please count your repetitions yourself/,
        (page) => killWorker(page, 'liveSetWorker'),
        (page) => page.getByRole('button', { name: 'End this set' }).click(),
      );
    },
  },
  {
    name: 'storage-worker-killed-in-a-set',
    says: /does not answer/,
    hasCamera: true,
    holds: (after, before) => newSets(after, before)[0]?.repetitions === 2,
    async put(device) {
      return inMiddle(await toMiddle(device), /does not answer/, (page) => killWorker(page, 'videoWriter'));
    },
  },
  {
    name: 'page-hidden-in-a-set',
    says: /You left this page/,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const show = (state: DocumentVisibilityState) => (page: Page) =>
        page.evaluate((visibility) => {
          Object.defineProperty(document, 'visibilityState', { value: visibility, configurable: true });
          document.dispatchEvent(new Event('visibilitychange'));
        }, state);
      return inMiddle(await toMiddle(device), /You left this page/, show('hidden'), async (page) => {
        await show('visible')(page);
        await page.getByRole('button', { name: 'Continue' }).click();
      });
    },
  },
  {
    name: 'page-frozen-in-a-set',
    says: null,
    hasCamera: true,
    holds: hasWholeSet,
    async put(device) {
      const page = await toMiddle(device);
      const browser = await device.context.newCDPSession(page);
      await browser.send('Page.setWebLifecycleState', { state: 'frozen' });
      await new Promise((resolve) => setTimeout(resolve, 8000));
      await browser.send('Page.setWebLifecycleState', { state: 'active' });
      await finishSession(page);
      return null;
    },
  },
  {
    name: 'person-leaves-and-another-comes',
    says: /out of the picture/,
    hasCamera: true,
    holds: (after, before) => newSets(after, before).length === 1,
    async put(device) {
      return inMiddle(
        await toMiddle(device),
        /out of the picture/,
        (page) => page.evaluate(() => window.stage.show('nobody')),
        (page) => page.evaluate(() => window.stage.show('other-person')),
      );
    },
  },
  {
    name: 'asleep-for-a-minute-in-a-set',
    says: null,
    hasCamera: true,
    stopsBrowser: true,
    holds: hasWholeSet,
    async put(device) {
      const page = await toMiddle(device);
      const browser = await device.context.browser()!.newBrowserCDPSession();
      const { processInfo } = await browser.send('SystemInfo.getProcessInfo');
      for (const { id } of processInfo) process.kill(id, 'SIGSTOP');
      await new Promise((resolve) => setTimeout(resolve, 60_000));
      for (const { id } of processInfo) process.kill(id, 'SIGCONT');
      await finishSession(page);
      return null;
    },
  },
  {
    name: 'load-of-four-times-in-a-set',
    says: null,
    hasCamera: true,
    // A sixth of a second with four times the load.
    tookMs: 160,
    holds(after, before) {
      const [set, ...others] = newSets(after, before);
      return others.length === 0 && set?.hasVideo === true && set.longestGapMs < longestGapMs;
    },
    async put(device) {
      const page = await beginSet(device);
      const browser = await device.context.newCDPSession(page);
      await browser.send('Emulation.setCPUThrottlingRate', { rate: 4 });
      await page.evaluate(() => {
        const told: Told = { phases: [], lines: [] };
        Object.assign(window, { told });
        setInterval(() => {
          const film = document.querySelector<HTMLElement>('.film');
          const phase = film?.dataset['phase'] ?? '';
          const line = film?.querySelector<HTMLElement>('.film-caption')?.innerText ?? '';
          if (told.phases.at(-1) !== phase) told.phases.push(phase);
          if (told.lines.at(-1) !== line) told.lines.push(line);
        }, 50);
      });
      await inPhase(page, 'working');
      // Too slow to count along: the person counts, and ends the set.
      await page.waitForTimeout(8000);
      await page.getByRole('button', { name: 'End this set' }).click();
      const { phases, lines } = await page.evaluate(() => (window as unknown as { told: Told }).told);
      await finishSession(page);
      const isOnce = phases.filter((phase) => phase === 'standing').length === 1;
      const isSentBack = lines.some((line) => line.startsWith('Come back'));
      return isOnce && !isSentBack ? null : `${phases.join()}: ${lines.join(' ')}`;
    },
  },
  ...(['backward', 'forward'] as const).map((way): Fault => ({
    name: `clock-${way}-in-a-set`,
    says: null,
    hasCamera: true,
    holds: (after, before) => hasWholeSet(after, before) && hasTimesInOrder(after, before),
    async put(device) {
      const page = await toMiddle(device);
      await page.evaluate(
        (byMs) => {
          const { now } = Date;
          window.Date = new Proxy(Date, {
            construct: (target, asked) =>
              new target(...((asked.length === 0 ? [now() + byMs] : asked) as [number])),
          });
          window.Date.now = () => now() + byMs;
        },
        (way === 'forward' ? 2 : -2) * 86_400_000,
      );
      const browser = await device.context.newCDPSession(page);
      await browser.send('Emulation.setTimezoneOverride', { timezoneId: 'Pacific/Kiritimati' });
      await finishSession(page);
      return null;
    },
  })),
  {
    name: 'two-tabs-record-at-once',
    says: null,
    hasCamera: true,
    holds: (after, before) =>
      newSets(after, before).filter(({ repetitions, hasVideo }) => repetitions === 2 && hasVideo).length ===
      2,
    async put(device) {
      const [one, other] = [await beginSet(device), await beginSet(device)];
      await Promise.all([finishSession(one), finishSession(other)]);
      return null;
    },
  },
  ...(['standing', 'countdown', 'working', 'finishing'] as const).map((phase): Fault => ({
    name: `tab-killed-while-${phase}`,
    says: null,
    hasCamera: true,
    holds: (after, before) => newSets(after, before).length === 1,
    async put(device) {
      const page = await beginSet(device);
      await inPhase(page, phase);
      await page.waitForTimeout(1000);
      await page.close({ runBeforeUnload: false });
      await keepInterrupted(device);
      return null;
    },
  })),
  {
    name: 'tab-killed-while-answering',
    says: null,
    hasCamera: true,
    holds: (after, before) =>
      hasWholeSet(after, before) && Object.values(after).some((text) => text.includes('"painAfter":3')),
    async put(device) {
      const page = await beginSet(device);
      await inPhase(page, 'all-done');
      await page.getByRole('button', { name: 'Say how it was' }).click();
      await page.getByRole('radio', { name: /^2\b/ }).check({ force: true });
      await page.getByRole('button', { name: 'Continue' }).click();
      await page.getByRole('radio', { name: /^3\b/ }).check({ force: true });
      await page.waitForTimeout(1500);
      await page.close({ runBeforeUnload: false });
      return null;
    },
  },
];

/** Whether no session that is new ends before it began. */
function hasTimesInOrder(after: Kept, before: Kept): boolean {
  return Object.keys(after)
    .filter((key) => key.startsWith('session ') && before[key] === undefined)
    .map((key) => JSON.parse(after[key]!) as { startedAt: string; endedAt: string | null })
    .every(({ startedAt, endedAt }) => endedAt !== null && endedAt >= startedAt);
}
