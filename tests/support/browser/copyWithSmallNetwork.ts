import { cpSync, mkdtempSync, readdirSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { projectRoot } from '#tools/commands/tools/projectRoot';

/** A copy of the built pages with the small network in the default one's place, which takes twice as long. */
export function copyWithSmallNetwork(): string {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-small-'));
  cpSync(join(projectRoot, 'dist-tools'), folder, { recursive: true });
  const models = join(folder, 'models');
  for (const name of readdirSync(models).filter((one) => one.startsWith('blazepose-lite.')))
    cpSync(join(models, name), join(models, name.replace('lite', 'full')));
  return folder;
}
