import { cpSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { weightDigests } from '#device/pose/weightDigests';
import { projectRoot } from '#tools/commands/tools/projectRoot';

/** A copy of the built pages with the small network in the default one's place, which takes twice as long. */
export function copyWithSmallNetwork(): string {
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-small-'));
  cpSync(join(projectRoot, 'dist-tools'), folder, { recursive: true });
  const worker = readdirSync(join(folder, 'assets')).find((name) => name.startsWith('poseWorker-'))!;
  const workerPath = join(folder, 'assets', worker);
  let script = readFileSync(workerPath, 'utf8');
  for (const ending of ['json', 'bin']) {
    const [small, usual] = [`blazepose-lite.${ending}`, `blazepose-full.${ending}`];
    cpSync(join(folder, 'models', small), join(folder, 'models', usual));
    script = script.replaceAll(weightDigests[usual]!, weightDigests[small]!);
  }
  writeFileSync(workerPath, script);
  return folder;
}
