import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { digestDifferences, folderDigests } from './tools/folderDigests';
import { projectRoot } from './tools/projectRoot';
import { readArguments } from './tools/readArguments';
import { runCommand } from './tools/runCommand';

/** What differs between the machines that build: the day, the language, and how paths are spelt in reports. */
const surroundings = [
  { TZ: 'Pacific/Kiritimati', LANG: 'C' },
  { TZ: 'Pacific/Niue', LANG: 'de_DE.UTF-8' },
];

/** Builds the pages twice, each into an empty folder, and compares every file; no file may name a folder of this machine. */
await runCommand(async () => {
  readArguments({}, 'Usage: npm run -s check-builds');
  const folder = mkdtempSync(join(tmpdir(), 'overfoot-builds-'));
  try {
    const digests = surroundings.map((environment, index) => {
      const outDir = join(folder, `build-${index}`, 'dist');
      build(outDir, environment);
      return { outDir, files: folderDigests(outDir) };
    });
    const [first, second] = [digests[0]!, digests[1]!];
    const faults = [
      ...digestDifferences(first.files, second.files),
      ...[...first.files.keys()]
        .filter((path) => readFileSync(join(first.outDir, path)).includes(projectRoot))
        .map((path) => `${path}: names ${projectRoot}`),
    ];
    faults.forEach((fault) => console.log(`DIFFERS  ${fault}`));
    const lines = [...first.files].map(([path, digest]) => `${digest}  ${path}\n`).join('');
    const whole = createHash('sha256').update(lines).digest('hex');
    console.log(
      `${first.files.size} files, ${faults.length} differences. SHA-256 of the list of their SHA-256: ${whole}`,
    );
    if (faults.length > 0) process.exitCode = 1;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

function build(outDir: string, environment: Record<string, string>): void {
  const vite = join(projectRoot, 'node_modules/vite/bin/vite.js');
  const { status, stdout, stderr } = spawnSync(
    process.execPath,
    [vite, 'build', '--outDir', outDir, '--emptyOutDir', '--logLevel', 'warn'],
    { cwd: projectRoot, encoding: 'utf8', env: { ...process.env, ...environment } },
  );
  if (status !== 0) throw new Error(`The pages could not be built:\n${stdout}${stderr}`);
}
