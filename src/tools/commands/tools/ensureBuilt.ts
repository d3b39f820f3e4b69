import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './projectRoot';

const sources = ['src', 'public', 'fixtures', 'vite.config.ts', 'vite.tools.config.ts', 'package-lock.json'];
/** Folders that no page is built from. */
const notInPages = /^(src\/tools\/(commands|validation)\/|fixtures\/(?!example\.))/;

/** Builds all pages where a build is missing or older than what it is made from. Says so on a terminal only. */
export function ensureBuilt(): void {
  const builtMs = statSync(join(projectRoot, 'dist-tools/tools/headless/headless.html'), {
    throwIfNoEntry: false,
  })?.mtimeMs;
  if (builtMs !== undefined && newestSourceMs() <= builtMs) return;
  if (process.stderr.isTTY) console.error('Building the pages first ...');
  const vite = join(projectRoot, 'node_modules/vite/bin/vite.js');
  for (const words of [['build'], ['build', '--config', 'vite.tools.config.ts']]) {
    const { status, stdout, stderr } = spawnSync(process.execPath, [vite, ...words, '--logLevel', 'warn'], {
      cwd: projectRoot,
      encoding: 'utf8',
    });
    if (status !== 0) throw new Error(`The pages could not be built:\n${stdout}${stderr}`);
  }
}

function newestSourceMs(): number {
  let newestMs = 0;
  for (const source of sources) {
    const path = join(projectRoot, source);
    const entry = statSync(path, { throwIfNoEntry: false });
    if (entry === undefined) continue;
    const files = entry.isDirectory()
      ? readdirSync(path, { recursive: true, encoding: 'utf8' }).map((name) => `${source}/${name}`)
      : [source];
    for (const file of files) {
      if (notInPages.test(file.replaceAll('\\', '/'))) continue;
      const found = statSync(join(projectRoot, file), { throwIfNoEntry: false });
      if (found?.isFile()) newestMs = Math.max(newestMs, found.mtimeMs);
    }
  }
  return newestMs;
}
