import { appendFileSync, cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test, type Page } from '@playwright/test';
import { goHome } from '#tools/commands/tools/homePages';
import { projectRoot } from '#tools/commands/tools/projectRoot';
import { serveBuild } from '#tools/commands/tools/serveBuild';
import { firstHalf } from '../support/browser/firstHalf';

test.use({ serviceWorkers: 'allow', bypassCSP: false });

const keptLine = (page: Page) => page.getByText('opens without one');
const rows = (page: Page) => page.getByRole('grid', { name: 'Repetitions' }).getByRole('rowheader');

test(
  'after one visit everything works without a network, tracking a video included',
  { tag: '@network' },
  async ({ page }) => {
    const server = await serveBuild();
    await page.goto(server.url);
    await expect(keptLine(page)).toBeVisible({ timeout: 60_000 });
    await server.close();

    const failed: string[] = [];
    page.on('pageerror', (error) => failed.push(error.message));
    await page.reload();
    await expect(keptLine(page)).toBeVisible();
    expect(await page.evaluate(() => crossOriginIsolated)).toBe(true);
    await page.getByRole('button', { name: 'I treat people' }).click();
    await page.locator('input[type=file]').setInputFiles({
      name: 'half.mp4',
      mimeType: 'video/mp4',
      buffer: firstHalf(),
    });
    await page.getByRole('radio', { name: 'Right leg' }).check({ force: true });
    await page.getByRole('button', { name: 'Measure this video' }).click();
    await expect(rows(page)).toHaveCount(1, { timeout: 80_000 });
    expect(failed).toEqual([]);

    await page.goto(new URL('licences.txt', server.url).href);
    await expect(page.locator('body')).toContainText('Copyright The Overfoot authors');
  },
);

test('a newer version waits until it is asked for and no other tab is open', async ({ page, context }) => {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-newer-'));
  cpSync(join(projectRoot, 'dist'), folder, { recursive: true });
  const server = await serveBuild(folder);
  try {
    await page.goto(server.url);
    await expect(keptLine(page)).toBeVisible({ timeout: 60_000 });
    appendFileSync(join(folder, 'sw.js'), '\n// A newer version.\n');
    await page.reload();
    const message = page.getByText('A newer version of Overfoot is ready');
    await expect(message).toBeVisible({ timeout: 30_000 });

    const other = await context.newPage();
    await other.goto(server.url);
    await goHome(other);
    const start = page.getByRole('button', { name: 'Start it' });
    await start.click();
    await expect(page.getByText('Close the other tabs')).toBeVisible();
    await other.close();

    await start.click();
    await page.waitForEvent('load');
    await expect(keptLine(page)).toBeVisible();
    await expect(message).toBeHidden();
  } finally {
    await server.close();
    rmSync(folder, { recursive: true });
  }
});
