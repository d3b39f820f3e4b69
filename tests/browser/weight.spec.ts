import { readdirSync, readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, test } from '@playwright/test';
import { projectRoot } from '#tools/commands/tools/projectRoot';

/** What a slow phone network carries in a second or two; a limit to grow within, not a target. Bytes, compressed. */
const firstScriptAtMost = 170 * 1024;
/** ... with what is read before anything is shown: whether the device is locked, what is kept, and the words of patients. */
const untilShownAtMost = 325 * 1024;
/** Files among which that is divided: each is a request, and those that it names are asked for after it. */
const requestsAtMost = 8;

/** Scripts that a page names in itself, and those that they import from their beginning. */
async function firstScripts(read: (path: string) => Promise<string>): Promise<Map<string, string>> {
  const scripts = new Map<string, string>();
  const waiting = [...(await read('./')).matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map(
    ([, path]) => path!,
  );
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    if (scripts.has(path)) continue;
    const text = await read(path);
    scripts.set(path, text);
    waiting.push(...importedBy(text).map((name) => `assets/${name}`));
  }
  return scripts;
}

/** Names of the scripts that a script imports from its beginning. */
function importedBy(text: string): string[] {
  return [...text.matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g)].map(([, name]) => name!);
}

const weightOf = (texts: Iterable<string | Buffer>) =>
  [...texts].reduce((bytes, text) => bytes + gzipSync(text, { level: 9 }).length, 0);

test('the first script is small, and so is all that the start screen needs', async ({ page, request }) => {
  const scripts = await firstScripts(async (path) => (await request.get(path)).text());
  expect(scripts.size).toBeGreaterThan(0);
  expect(weightOf(scripts.values())).toBeLessThanOrEqual(firstScriptAtMost);

  const fetched = new Map<string, Promise<Buffer>>();
  page.on('response', (response) => {
    if (/\.js$/.test(response.url())) fetched.set(response.url(), response.body());
  });
  await page.goto('./');
  await expect(page.getByRole('button', { name: 'Record yourself' })).toBeVisible();
  const urls = [...fetched.keys()];
  expect(urls.length).toBeLessThanOrEqual(requestsAtMost);
  for (const path of scripts.keys())
    expect(
      urls.some((url) => url.endsWith(path)),
      path,
    ).toBe(true);
  const bytes = weightOf(await Promise.all(fetched.values()));
  test.info().annotations.push({ type: 'fetched until the start screen, bytes', description: String(bytes) });
  expect(bytes).toBeLessThanOrEqual(untilShownAtMost);
});

test('no scripts import each other in a circle: one of them would use what is not defined yet', () => {
  const folder = `${projectRoot}dist/assets`;
  const names = readdirSync(folder).filter((name) => name.endsWith('.js'));
  const left = new Map(names.map((name) => [name, importedBy(readFileSync(`${folder}/${name}`, 'utf8'))]));
  // Those that import nothing that is left are taken away, over and over; only circles and what imports them stay.
  for (let before = Infinity; left.size < before;) {
    before = left.size;
    for (const [name, imports] of left) if (!imports.some((one) => left.has(one))) left.delete(name);
  }
  expect([...left.keys()]).toEqual([]);
});

test('a screen that cannot be fetched is explained', async ({ page }) => {
  await page.route('**/assets/PlanScreen-*.js', (route) => route.abort());
  await page.goto('./');
  await page.getByRole('button', { name: 'Write a plan' }).click();
  await expect(page.getByRole('alert')).toContainText('This part of Overfoot could not be loaded');
  await page.unroute('**/assets/PlanScreen-*.js');
  await page.getByRole('button', { name: 'Reload the page' }).click();
  await expect(page.getByRole('heading', { name: 'Write a plan for a patient' })).toBeVisible();
});
