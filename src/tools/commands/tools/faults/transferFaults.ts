import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { packParcel } from '#features/sharing/store/parcel';
import { sealFor } from '#shell/seal';
import { projectRoot } from '../projectRoot';
import { idOf, sessionOf, type FaultDevice } from './faultDevice';
import { mayBeFull, setFull } from './fullDevice';
import { longestMs, openKept, passphrase, press, toKept, unlock } from './keptPages';
import type { Fault } from './runFault';
import { shown } from './storageFaults';

/** A session of a third patient, with its video, sealed for this device. */
async function sentFile(device: FaultDevice, recipient: string): Promise<Buffer> {
  const recording = { ...device.recordings[0]!, id: idOf('7', 9) };
  const session = sessionOf(9, 'Grey Plover 5', [recording]);
  const bytes = readFileSync(join(projectRoot, 'fixtures/example.mp4'));
  const video = new Blob([bytes], { type: 'video/mp4' });
  const packed = await packParcel({ session, sets: [{ recording, video }], sentAt: session.endedAt! }, null);
  return Buffer.from(await (await sealFor([recipient], packed)).arrayBuffer());
}

async function saveBackup(page: Page): Promise<string> {
  await press(page, 'Backup');
  await page.getByLabel('Passphrase of the backup').fill(passphrase);
  await page.getByLabel('Once more, to save a backup').fill(passphrase);
  const coming = page.waitForEvent('download', { timeout: longestMs });
  await press(page, 'Save a backup of everything');
  return (await coming).path();
}

/** In the dialog of backups; writes nothing yet. */
async function openBackupFile(page: Page, path: string): Promise<void> {
  await page.getByLabel('Passphrase of the backup').fill(passphrase);
  const choosing = page.waitForEvent('filechooser');
  await press(page, 'Open a backup');
  await (await choosing).setFiles(path);
  await page.getByText('nothing has been written yet').waitFor({ timeout: longestMs });
}

async function chooseMinutes(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: /Lock by itself/ }).click();
  await page.getByRole('option', { name, exact: true }).click();
}

/** Faults of what comes from another device, and of settings. */
export const transferFaults: readonly Fault[] = [
  {
    name: 'full-while-a-backup-is-restored',
    says: /storage is full/,
    async put(device) {
      const page = await openKept(device, mayBeFull);
      const path = await saveBackup(page);
      const storage = await device.openStorage();
      await storage.evaluate(async (id) => {
        const { repository } = await window.storagePage.openRepository();
        await repository.sessions.remove(id);
        repository.close();
      }, device.sessions[0].id);
      await storage.close();
      await openBackupFile(page, path);
      // The session and something of its first set, and then no more.
      await setFull(page, true, 3);
      await press(page, 'Restore what is missing');
      const sentence = await shown(page, /storage is full/);
      await setFull(page, false);
      await openBackupFile(page, path);
      await press(page, 'Restore what is missing');
      await page.getByText('Restored.').waitFor();
      return sentence;
    },
  },
  {
    name: 'full-while-a-sent-session-is-kept',
    says: /storage is full/,
    holds: (after) =>
      after[`video ${idOf('7', 9)}`] ===
        String(readFileSync(join(projectRoot, 'fixtures/example.mp4')).length) &&
      Object.values(after).some((text) => text.includes('Grey Plover 5')),
    async put(device) {
      const page = await openKept(device, mayBeFull);
      await press(page, 'Key');
      await press(page, 'Make a key');
      const recipient = await page.getByText(/^age1/).innerText();
      await press(page, 'Close');
      const buffer = await sentFile(device, recipient.trim());
      const take = async () => {
        await page
          .locator('input[type=file]')
          .setInputFiles({ name: 'sent.age', mimeType: 'application/octet-stream', buffer });
        await page.getByRole('button', { name: 'Keep it all the same' }).click({ timeout: longestMs });
      };
      await setFull(page, true, 2);
      await take();
      const sentence = await shown(page, /storage is full/);
      await setFull(page, false);
      await take();
      await page
        .getByRole('listitem')
        .filter({ hasText: /: kept/ })
        .waitFor();
      return sentence;
    },
  },
  {
    name: 'full-while-a-setting-is-saved',
    says: /storage is full/,
    async put(device) {
      const page = await openKept(device, mayBeFull);
      await press(page, 'Lock');
      await page.getByLabel('Passphrase of the lock').fill(passphrase);
      await page.getByLabel('Once more').fill(passphrase);
      await press(page, 'Lock this device');
      await unlock(page);
      await toKept(page);
      await press(page, 'Lock');
      await setFull(page, true);
      await chooseMinutes(page, '5 minutes');
      const sentence = await shown(page, /storage is full/);
      await setFull(page, false);
      await chooseMinutes(page, '30 minutes');
      await page.getByLabel('Passphrase of the lock').fill(passphrase);
      await press(page, 'Turn off the lock');
      await unlock(page);
      await toKept(page);
      return sentence;
    },
  },
];
