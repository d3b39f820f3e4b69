import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import type { Repository } from '#device/storage/repository';
import { openKeptSessions } from '../openKeptSessions';
import { projectRoot } from '../projectRoot';
import { serveBuild } from '../serveBuild';
import { startOf } from '../startOf';
import { mayBeFull, setFull } from './fullDevice';
import { answerAndSave, beginSet, counted, finishSession, inPhase, newSets } from './homeSet';
import { longestMs, openKept, passphrase, press, toKept, unlock } from './keptPages';
import { openOnceMore, visitOnce } from './offlineVisit';
import type { Fault } from './runFault';
import { shown } from './storageFaults';

/**
 * Leaves the device only so many bytes more, or less, than it uses now.
 *
 * @returns  makes room again
 */
async function fill(page: Page, spareBytes: number): Promise<() => Promise<void>> {
  const usedBytes = await page.evaluate(async () => (await navigator.storage.estimate()).usage!);
  const browser = await page.context().newCDPSession(page);
  const { origin } = new URL(page.url());
  await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: usedBytes + spareBytes });
  return async () => void (await browser.send('Storage.overrideQuotaForOrigin', { origin }));
}

/** Faults of single writes, and of time and tabs between them. */
export const writeFaults: readonly Fault[] = [
  {
    name: 'full-in-a-set',
    says: /storage is full/,
    hasCamera: true,
    holds: (after, before) => newSets(after, before)[0]?.repetitions === 2,
    async put(device) {
      const page = await beginSet(device);
      await counted(page, 1);
      const makeRoom = await fill(page, -500_000);
      const sentence = await shown(page, /storage is full/, longestMs);
      await makeRoom();
      await finishSession(page);
      return sentence;
    },
  },
  {
    name: 'full-while-a-session-is-saved',
    says: /storage is full/,
    hasCamera: true,
    holds: (after, before) =>
      newSets(after, before)[0]?.repetitions === 2 &&
      Object.values(after).some((text) => text.includes('It went well.')),
    async put(device) {
      const page = await beginSet(device, mayBeFull);
      await inPhase(page, 'all-done');
      await page.waitForTimeout(2000); // The set itself is kept by then.
      await press(page, 'Say how it was');
      await setFull(page, true);
      const saved = answerAndSave(page);
      const sentence = await shown(page, /storage is full/, longestMs);
      await setFull(page, false);
      await saved;
      await press(page, 'Try again');
      await page.getByText('Not saved yet').waitFor({ state: 'detached' });
      return sentence;
    },
  },
  {
    name: 'full-while-the-lock-is-turned-on-and-off',
    says: /not sealed.*not enough room.*still on.*not enough room/s,
    async put(device) {
      const page = await openKept(device);
      await press(page, 'Lock');
      await page.getByLabel('Passphrase of the lock').fill(passphrase);
      await page.getByLabel('Once more').fill(passphrase);
      const makeRoom = await fill(page, 100_000);
      await press(page, 'Lock this device');
      await unlock(page);
      const message = page.locator('.message', { hasText: 'could not be changed' });
      const trouble = () => message.innerText({ timeout: longestMs });
      const on = await trouble();
      await makeRoom();
      await page.reload();
      await unlock(page);
      await toKept(page);
      await press(page, 'Lock');
      await page.getByLabel('Passphrase of the lock').fill(passphrase);
      const makeRoomAgain = await fill(page, 100_000);
      await press(page, 'Turn off the lock');
      await unlock(page);
      const off = await trouble();
      await makeRoomAgain();
      await page.reload();
      await unlock(page);
      await toKept(page);
      return `${on} ${off}`;
    },
  },
  {
    name: 'full-while-a-key-is-made',
    says: /storage is full/,
    async put(device) {
      const page = await openKept(device, () => {
        const { put } = IDBObjectStore.prototype;
        IDBObjectStore.prototype.put = function (...asked: Parameters<typeof put>) {
          if (this.name === 'notes') throw new DOMException('no room', 'QuotaExceededError');
          return put.apply(this, asked);
        };
      });
      await press(page, 'Key');
      await press(page, 'Make a key');
      return shown(page, /storage is full/);
    },
  },
  {
    name: 'database-of-a-newer-version',
    says: /newer version of this program.*Reload/,
    async put(device) {
      const page = await device.open(() => {
        Object.defineProperty(IDBDatabase.prototype, 'version', { get: () => 1000 });
      });
      await openKeptSessions(page);
      return shown(page, /newer version of this program/);
    },
  },
  {
    name: 'twenty-five-sets-in-a-row',
    says: null,
    holds: (after, before) =>
      newSets(after, before).filter(({ repetitions, hasVideo }) => repetitions > 0 && hasVideo).length === 25,
    async put(device) {
      const page = await device.openStorage();
      const recording = device.recordings[0]!;
      const asked = { kept: recording, start: startOf(recording) };
      await page.evaluate(async ({ kept, start }) => {
        const { repository } = await window.storagePage.openRepository();
        const pictures = new Blob([new Uint8Array(100_000)], { type: 'video/mp4' });
        for (let set = 0; set < 25; set++) {
          const id = crypto.randomUUID();
          const open: Awaited<ReturnType<Repository['beginSet']>> = await repository.beginSet(
            { ...start, id },
            () => undefined,
          );
          await open.video?.write(pictures);
          await open.endVideo();
          await open.finish({ ...kept, id }, 'impossible', null);
        }
        repository.close();
      }, asked);
      await page.close();
      return null;
    },
  },
  {
    name: 'server-gone-in-the-middle-of-an-update',
    says: null,
    async put(device) {
      const folder = mkdtempSync(join(tmpdir(), 'overfoot-update-'));
      cpSync(join(projectRoot, 'dist'), folder, { recursive: true });
      const server = await serveBuild(folder);
      const context = await device.context.browser()!.newContext({ baseURL: server.url });
      try {
        const page = await visitOnce(context);
        // The newer version names files that never come.
        const worker = join(folder, 'sw.js');
        writeFileSync(worker, readFileSync(worker, 'utf8').replaceAll('index.html', 'newer.html'));
        await page.reload();
        await page.waitForTimeout(3000);
        await server.close();
        await openOnceMore(page);
        return null;
      } finally {
        await context.close();
        await server.close().catch(() => undefined);
        rmSync(folder, { recursive: true });
      }
    },
  },
  {
    name: 'time-zone-and-summer-time-change-between-sessions',
    says: null,
    async put(device) {
      // Before and after clocks are put forward, on either side of the date line, and where offsets are odd.
      for (const timezoneId of [
        'Europe/Berlin',
        'Pacific/Kiritimati',
        'Pacific/Pago_Pago',
        'Asia/Kathmandu',
      ]) {
        const page = await device.context.newPage();
        const browser = await device.context.newCDPSession(page);
        await browser.send('Emulation.setTimezoneOverride', { timezoneId });
        await page.goto('./');
        await openKeptSessions(page);
        for (const { patient } of device.sessions) await page.getByText(patient).first().waitFor();
        await page.close();
      }
      return null;
    },
  },
];
