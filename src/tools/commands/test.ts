import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { constants, setPriority } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { projectRoot } from './tools/projectRoot';
import { readCounts, type Counts } from './tools/readCounts';
import { runCommand } from './tools/runCommand';

const reports = join(projectRoot, 'test-results');
/** Characters of a failed page's description that are printed. */
const longestContext = 6000;
const firstPort = Number(process.env['OVERFOOT_TEST_PORT'] ?? 4273);

/**
 * Runs scripts of package.json, even if earlier ones failed: one argument after the other; in one, what is joined
 * by '+' in parallel, and what is joined by ',' one after the other. Of those in parallel, the first has the
 * processor first. Ends with the counts of all tests; a script without tests counts as one.
 */
await runCommand(async () => {
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });
  const total: Counts = { passed: 0, failed: 0, skipped: 0 };
  const runInTurn = async (scripts: string[], place: Place) => {
    for (const script of scripts) {
      const counts = await runScript(script, place);
      for (const key of ['passed', 'failed', 'skipped'] as const) total[key] += counts[key];
    }
  };
  for (const lines of process.argv.slice(2).map((words) => words.split('+'))) {
    const isAlone = lines.length === 1;
    await Promise.all(lines.map((line, index) => runInTurn(line.split(','), { index, isAlone })));
  }
  const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
  console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`);
  if (total.failed > 0 || total.passed === 0) process.exitCode = 1;
});

/** Where a script stands among those in parallel. */
interface Place {
  index: number;
  isAlone: boolean;
}

/** Lines of a script that is not alone begin with its name. */
async function runScript(script: string, { index, isAlone }: Place): Promise<Counts> {
  if (isAlone) console.log(`\n== ${script}`);
  const startMs = performance.now();
  const name = script.replace(':', '-');
  const report = join(reports, `${name}.json`);
  const child = spawn('npm', ['run', '--silent', script], {
    cwd: projectRoot,
    // Each has a server of its own.
    env: { ...process.env, OVERFOOT_TEST_REPORT: report, OVERFOOT_TEST_PORT: String(firstPort + index) },
    stdio: isAlone ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    shell: process.platform === 'win32',
  });
  if (index > 0 && child.pid !== undefined) setPriority(child.pid, constants.priority.PRIORITY_LOW);
  for (const stream of [child.stdout, child.stderr])
    if (stream !== null)
      createInterface(stream).on('line', (line) => console.log(`${script.replace('test:', '')} | ${line}`));
  const isGood = await new Promise<boolean>((resolve) => child.on('close', (code) => resolve(code === 0)));
  const counts = countScript(isGood, script.startsWith('test:') ? readCounts(report) : undefined);
  const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
  if (counts.failed > 0) printFailedPages(join(reports, name));
  console.log(`== ${script}: ${counts.failed === 0 ? 'good' : 'FAILED'}, ${seconds} s`);
  return counts;
}

/** What was on the page where a browser test failed: on another machine, the only thing to go by. */
function printFailedPages(folder: string): void {
  for (const name of existsSync(folder) ? readdirSync(folder) : []) {
    const context = join(folder, name, 'error-context.md');
    if (existsSync(context))
      console.log(`\n== ${name}\n${readFileSync(context, 'utf8').slice(0, longestContext)}`);
  }
}

/**
 * A script that failed without a failed test of its own (a crash, no report) counts as one failure.
 *
 * @param tests  undefined where it runs none, null where its report is missing
 */
function countScript(isGood: boolean, tests: Counts | null | undefined): Counts {
  if (tests === undefined) return { passed: isGood ? 1 : 0, failed: isGood ? 0 : 1, skipped: 0 };
  const counts = tests ?? { passed: 0, failed: 1, skipped: 0 };
  return isGood || counts.failed > 0 ? counts : { ...counts, failed: 1 };
}
