import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { chromium, expect, test, type Page } from '@playwright/test';
import { browserSwitches, findBrowser } from '#tools/commands/tools/findBrowser';
import { openKeptSessions } from '#tools/commands/tools/openKeptSessions';
import { demoSessions, saveSessions } from '../support/browser/saveSessions';

/** Two pseudonyms, the key, and what stands at the start of every MP4 file. */
const secrets = ['Blue Heron 7', 'Quiet Otter 3', 'AGE-SECRET-KEY-1', 'ftypisom'];
const passphrase = 'otter river stone lamp';

const sessions = (page: Page) =>
  page.getByRole('listbox', { name: 'Kept sessions by patient' }).getByRole('option');
const locked = (page: Page) => page.getByRole('heading', { name: 'What is kept on this device is locked' });

async function tryToUnlock(page: Page, words: string) {
  await page.getByLabel('Passphrase', { exact: true }).fill(words);
  await page.keyboard.press('Enter');
}

/** The invented sessions and a key, with the kept sessions and the key's dialog shown. */
async function keepDemoWithKey(page: Page) {
  await saveSessions(page, demoSessions());
  await page.goto('./');
  await openKeptSessions(page);
  await page.getByRole('button', { name: 'Key', exact: true }).click();
  await page.getByRole('button', { name: 'Make a key' }).click();
  await expect(page.getByText(/^age1/)).toBeVisible();
}

const openLock = (page: Page) => page.getByRole('button', { name: 'Lock', exact: true }).click();

/** In the dialog of the lock. */
async function lockWith(page: Page, words: string, again = words) {
  await page.getByLabel('Passphrase of the lock').fill(words);
  await page.getByLabel('Once more').fill(again);
  await page.getByRole('button', { name: 'Lock this device' }).click();
}

/** With what is left to do after the lock was changed; trying a passphrase takes long by design. */
async function unlock(page: Page, words: string) {
  await expect(locked(page)).toBeVisible({ timeout: 20_000 });
  await tryToUnlock(page, words);
  await expect(locked(page)).toBeHidden({ timeout: 40_000 });
}

/** Which of these words stand in the database and the files of this page. */
const foundOnDisk = (page: Page, words: readonly string[]) =>
  page.evaluate(async (words) => {
    const latin1 = (bytes: Uint8Array) => new TextDecoder('latin1').decode(bytes);
    interface Buckets {
      keys(): Promise<string[]>;
      open(name: string): Promise<{ indexedDB: IDBFactory } & Pick<StorageManager, 'getDirectory'>>;
    }
    const { storageBuckets } = navigator as unknown as { storageBuckets: Buckets };
    const [name, ...others] = await storageBuckets.keys();
    if (name === undefined || others.length > 0)
      throw new Error(`not one bucket: ${[name, ...others].join()}`);
    const bucket = await storageBuckets.open(name);
    const asText = (_: string, field: unknown) => (field instanceof Uint8Array ? latin1(field) : field);
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = bucket.indexedDB.open('overfoot');
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
    const folder = await (await bucket.getDirectory()).getDirectoryHandle('videos');
    for await (const entry of folder.values())
      text += latin1(new Uint8Array(await (await (entry as FileSystemFileHandle).getFile()).arrayBuffer()));
    text += JSON.stringify({ ...localStorage });
    return words.filter((word) => text.includes(word));
  }, words);

test('a lock seals sessions, videos and keys, and only the passphrase opens them', async ({ page }) => {
  await keepDemoWithKey(page);
  await page.getByRole('button', { name: 'Close' }).click();
  expect(await foundOnDisk(page, secrets)).toEqual(secrets);

  await openLock(page);
  await lockWith(page, passphrase, 'otter river stone');
  await expect(page.getByText('The two are not the same')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByLabel('Once more').fill(passphrase);
  await page.getByRole('button', { name: 'Lock this device' }).click();

  await expect(locked(page)).toBeVisible({ timeout: 20_000 });
  await expect(page.getByLabel('Passphrase', { exact: true })).toBeFocused();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await tryToUnlock(page, 'another river stone lamp');
  await expect(page.getByRole('alert')).toContainText('does not open what is kept here', {
    timeout: 20_000,
  });
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

  await openLock(page);
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
    await openLock(page);
    await lockWith(page, passphrase);
  };
  await lockDevice();
  await expect(page.getByText('Another tab of this program is in the way')).toBeVisible();
  await other.close();
  await page.reload();
  await openKeptSessions(page);
  await lockDevice();
  await expect(locked(page)).toBeVisible({ timeout: 20_000 });
  await page.getByText('The passphrase is lost').click();
  await page.getByRole('button', { name: 'Delete everything …' }).click();
  await page.getByRole('button', { name: 'Yes, delete everything for good' }).click();
  await openKeptSessions(page);
  await expect(page.getByText('Nothing is kept on this device yet')).toBeVisible();
});

/** Which of these words stand in any file of a closed profile. */
function foundInProfile(folder: string, words: readonly string[]): string[] {
  const found = new Set<string>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    if (!entry.isFile()) continue;
    const bytes = readFileSync(join(entry.parentPath, entry.name));
    // Databases keep texts in one byte or two for each letter.
    for (const word of words)
      if (bytes.includes(word) || bytes.includes(Buffer.from(word, 'utf16le'))) found.add(word);
  }
  return words.filter((word) => found.has(word));
}

test('a closed browser leaves nothing readable on the disk once the lock is on, or everything is deleted', async ({
  baseURL,
}) => {
  test.slow();
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-profile-'));
  /** Does something in a browser with this profile, and closes it. */
  const browse = async (work: (page: Page) => Promise<void>) => {
    const context = await chromium.launchPersistentContext(folder, {
      executablePath: findBrowser(),
      args: browserSwitches,
      baseURL: baseURL!,
      serviceWorkers: 'block',
      bypassCSP: true,
    });
    await work(context.pages()[0]!);
    await context.close();
  };
  const words = [...secrets.slice(0, 3), 'felt wobbly'];
  try {
    await browse(async (page) => {
      await keepDemoWithKey(page);
    });
    expect(foundInProfile(folder, words)).toEqual(words);
    await browse(async (page) => {
      await page.goto('./');
      await openKeptSessions(page);
      await openLock(page);
      await lockWith(page, passphrase);
      await unlock(page, passphrase);
      await openKeptSessions(page);
      await expect(sessions(page)).toHaveCount(4);
    });
    expect(foundInProfile(folder, words)).toEqual([]);
    await browse(async (page) => {
      await page.goto('./');
      await unlock(page, passphrase);
      await openKeptSessions(page);
      await openLock(page);
      await page.getByLabel('Passphrase of the lock').fill(passphrase);
      await page.getByRole('button', { name: 'Turn off the lock' }).click();
      await unlock(page, passphrase);
      await openKeptSessions(page);
      await expect(sessions(page)).toHaveCount(4);
    });
    expect(foundInProfile(folder, words)).toEqual(words);
    await browse(async (page) => {
      await page.goto('./');
      await openKeptSessions(page);
      await page.getByRole('button', { name: 'Storage', exact: true }).click();
      await page.getByRole('button', { name: 'Delete everything …' }).click();
      await page.getByRole('button', { name: 'Yes, delete everything for good' }).click();
      await expect(page.getByText('Nothing is kept on this device yet')).toBeAttached();
    });
    expect(foundInProfile(folder, words)).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 });
  }
});

test('a lock that is damaged leads on, and a plan’s link is not in the address while it is asked for', async ({
  page,
}) => {
  await saveSessions(page, demoSessions().slice(0, 1));
  await page.goto('./');
  await openKeptSessions(page);
  await openLock(page);
  await lockWith(page, 'aaaaaaaaaaaa');
  await expect(page.getByRole('alert')).toContainText('easy to guess: it repeats itself');
  await lockWith(page, passphrase);
  await unlock(page, passphrase);
  await openKeptSessions(page);

  await page.goto('about:blank');
  await page.goto('./#plan=v1.abc');
  await expect(locked(page)).toBeVisible({ timeout: 20_000 });
  expect(await page.evaluate(() => location.hash)).toBe('');

  await page.evaluate(async () => {
    interface Buckets {
      keys(): Promise<string[]>;
      open(name: string): Promise<{ indexedDB: IDBFactory }>;
    }
    const { storageBuckets } = navigator as unknown as { storageBuckets: Buckets };
    const { indexedDB } = await storageBuckets.open((await storageBuckets.keys())[0]!);
    const database = await new Promise<IDBDatabase>((resolve) => {
      const opening = indexedDB.open('overfoot');
      opening.onsuccess = () => resolve(opening.result);
    });
    const writing = database.transaction('lock', 'readwrite');
    writing.objectStore('lock').put({ key: 'lock', value: 'damaged' });
    await new Promise((resolve) => (writing.oncomplete = resolve));
    database.close();
  });
  await page.reload();
  await expect(page.getByRole('heading', { name: 'The lock of this device is damaged' })).toBeVisible();
  await page.getByRole('button', { name: 'Delete everything …' }).click();
  await page.getByRole('button', { name: 'Yes, delete everything for good' }).click();
  await openKeptSessions(page);
  await expect(page.getByText('Nothing is kept on this device yet')).toBeVisible();
});

test('a browser without storage buckets says what a lock can’t erase, and can start with an empty device', async ({
  page,
}) => {
  await page.addInitScript(() => Reflect.deleteProperty(Navigator.prototype, 'storageBuckets'));
  await saveSessions(page, demoSessions().slice(0, 1));
  const databases = () =>
    page.evaluate(async () => (await indexedDB.databases()).map(({ name }) => name).toSorted());
  expect(await databases()).toEqual(['overfoot-1']);
  await page.goto('./');
  await openKeptSessions(page);
  await expect(sessions(page)).toHaveCount(1);
  await openLock(page);
  await expect(page.getByText('What was kept here before is not erased.')).toBeVisible();
  expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  await page.getByLabel('Passphrase of the lock').fill(passphrase);
  await page.getByLabel('Once more').fill(passphrase);
  await page
    .getByRole('button', { name: 'Delete everything here and start with an empty, locked device' })
    .click();
  await unlock(page, passphrase);
  await openKeptSessions(page);
  await expect(page.getByText('Nothing is kept on this device yet')).toBeVisible();
  expect(await databases()).toEqual(['overfoot-2']);
  await page.reload();
  await unlock(page, passphrase);
});
