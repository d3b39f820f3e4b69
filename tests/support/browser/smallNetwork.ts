import { cpSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { BrowserContext } from '@playwright/test';
import { projectRoot } from '#tools/commands/tools/projectRoot';

/** Gives the small network to pages that ask for the default one, which takes twice as long. */
export async function giveSmallNetwork(context: BrowserContext): Promise<void> {
  await context.route(/models\/blazepose-full\./, (route) =>
    route.continue({ url: route.request().url().replace('blazepose-full', 'blazepose-lite') }),
  );
}

/** A copy of the built pages with the small network in the default one's place; for pages with a service worker. */
export function copyWithSmallNetwork(): string {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-small-'));
  cpSync(join(projectRoot, 'dist-tools'), folder, { recursive: true });
  const models = join(folder, 'models');
  for (const name of readdirSync(models).filter((one) => one.startsWith('blazepose-lite.')))
    cpSync(join(models, name), join(models, name.replace('lite', 'full')));
  return folder;
}
