import AxeBuilder from '@axe-core/playwright';
import { expect, test, type Page } from '@playwright/test';
import { openKeptSessions } from '../support/browser/openKeptSessions';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';

/** Two pseudonyms, the key, and what stands at the start of every MP4 file. */
const secrets = ['Blue Heron 7', 'Quiet Otter 3', 'AGE-SECRET-KEY-1', 'ftypisom'];
const passphrase = 'otter river stone lamp';

const sessions = (page: Page) =>
  page.getByRole('listbox', { name: 'Kept sessions by patient' }).getByRole('option');
const locked = (page: Page) => page.getByRole('heading', { name: 'What is kept on this device is locked' });

async function unlock(page: Page, words: string) {
  await page.getByLabel('Passphrase', { exact: true }).fill(words);
  await page.keyboard.press('Enter');
}

/** Which of these words stand in the database and the files of this page, as they lie on the disk. */
const foundOnDisk = (page: Page, words: readonly string[]) =>
  page.evaluate(async (words) => {
    const latin1 = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes);
    const asText = (_: string, field: unknown) => (field instanceof Uint8Array ? latin1(field) : field);
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('overfoot');
      opening.onsuccess = () => resolve(opening.result);
    });
    let text = '';
    for (const table of database.objectStoreNames) {
      const rows = await new Promise<unknown[]>((resolve) => {
        const reading = database.transaction(table).objectStore(table).getAll();
        reading.onsuccess = () => resolve(reading.result as unknown[]);
      });
      text += JSON.stringify(rows, asText);
    }
    database.close();
    const folder = await (await navigator.storage.getDirectory()).getDirectoryHandle('videos');
    for await (const entry of folder.values())
      text += latin1(new Uint8Array(await (await (entry as FileSystemFileHandle).getFile()).arrayBuffer()));
    text += JSON.stringify({ ...localStorage });
    return words.filter((word) => text.includes(word));
  }, words);

test('a lock seals sessions, videos and keys, and only the passphrase opens them', async ({ page }) => {
  await saveSessions(page, demoSessions());
  await page.goto('./');
  await openKeptSessions(page);
  await page.getByRole('button', { name: 'Key', exact: true }).click();
  await page.getByRole('button', { name: 'Make a key' }).click();
  await expect(page.getByText(/^age1/)).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();
  expect(await foundOnDisk(page, secrets)).toEqual(secrets);

  await page.getByRole('button', { name: 'Lock', exact: true }).click();
  await page.getByLabel('Passphrase of the lock').fill(passphrase);
  await page.getByLabel('Once more').fill('otter river stone');
  await page.getByRole('button', { name: 'Lock this device' }).click();
  await expect(page.getByText('The two are not the same')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByLabel('Once more').fill(passphrase);
  await page.getByRole('button', { name: 'Lock this device' }).click();

  await expect(locked(page)).toBeVisible();
  await expect(page.getByLabel('Passphrase', { exact: true })).toBeFocused();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await unlock(page, 'another river stone lamp');
  await expect(page.getByRole('alert')).toContainText('does not open what is kept here');
  await unlock(page, passphrase);
  await openKeptSessions(page);
  await expect(sessions(page)).toHaveCount(4);
  expect(await foundOnDisk(page, secrets)).toEqual([]);

  await page.getByRole('grid', { name: 'Sets' }).getByRole('row').first().click();
  await expect
    .poll(() => page.getByLabel('The measured video').evaluate((video: HTMLVideoElement) => video.videoWidth))
    .toBe(540);
  await page.reload();
  await unlock(page, passphrase);
  await openKeptSessions(page);
  await page.getByRole('button', { name: 'Key', exact: true }).click();
  await expect(page.getByText(/^age1/)).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();

  await page.getByRole('button', { name: 'Lock', exact: true }).click();
  await page.getByLabel('Passphrase of the lock').fill(passphrase);
  await page.getByRole('button', { name: 'Turn off the lock' }).click();
  await unlock(page, passphrase);
  await openKeptSessions(page);
  await expect(sessions(page)).toHaveCount(4);
  await page.reload();
  await openKeptSessions(page);
  expect(await foundOnDisk(page, secrets)).toEqual(secrets);
});

test('a lost passphrase leaves the way to start afresh, and another open tab prevents locking', async ({
  page,
  context,
}) => {
  await saveSessions(page, demoSessions().slice(0, 1));
  await page.goto('./');
  const other = await context.newPage();
  await other.goto('./');
  await openKeptSessions(page);
  const lockDevice = async () => {
    await page.getByRole('button', { name: 'Lock', exact: true }).click();
    await page.getByLabel('Passphrase of the lock').fill(passphrase);
    await page.getByLabel('Once more').fill(passphrase);
    await page.getByRole('button', { name: 'Lock this device' }).click();
  };
  await lockDevice();
  await expect(page.getByText('Another tab of this program is in the way')).toBeVisible();
  await other.close();
  await page.reload();
  await openKeptSessions(page);
  await lockDevice();
  await expect(locked(page)).toBeVisible();
  await page.getByText('The passphrase is lost').click();
  await page.getByRole('button', { name: 'Delete everything …' }).click();
  await page.getByRole('button', { name: 'Yes, delete everything for good' }).click();
  await openKeptSessions(page);
  await expect(page.getByText('Nothing is kept on this device yet')).toBeVisible();
});
