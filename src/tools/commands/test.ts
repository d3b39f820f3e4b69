import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './tools/projectRoot';
import { readCounts, type Counts } from './tools/readCounts';
import { runCommand } from './tools/runCommand';

const reports = join(projectRoot, 'test-results');
/** Characters of a failed page's description that are printed. */
const longestContext = 6000;

/**
 * Runs scripts of package.json one after the other, those joined by '+' in parallel, even if earlier ones
 * failed. Ends with the counts of all tests; a script without tests counts as one.
 */
await runCommand(async () => {
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });
  const total: Counts = { passed: 0, failed: 0, skipped: 0 };
  for (const group of process.argv.slice(2).map((words) => words.split('+'))) {
    for (const counts of await Promise.all(group.map((script) => runScript(script, group.length === 1)))) {
      for (const key of ['passed', 'failed', 'skipped'] as const) total[key] += counts[key];
    }
  }
  const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
  console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`);
  if (total.failed > 0 || total.passed === 0) process.exitCode = 1;
});

/** @param isAlone  then its output is shown as it comes, else at its end */
async function runScript(script: string, isAlone: boolean): Promise<Counts> {
  if (isAlone) console.log(`\n== ${script}`);
  const startMs = performance.now();
  const report = join(reports, `${script.replace(':', '-')}.json`);
  const child = spawn('npm', ['run', '--silent', script], {
    cwd: projectRoot,
    env: { ...process.env, OVERFOOT_TEST_REPORT: report },
    stdio: isAlone ? 'inherit' : ['ignore', 'pipe', 'pipe'],
    shell: process.platform === 'win32',
  });
  let output = '';
  for (const stream of [child.stdout, child.stderr]) stream?.on('data', (data) => (output += data));
  const isGood = await new Promise<boolean>((resolve) => child.on('close', (code) => resolve(code === 0)));
  const counts = countScript(isGood, script.startsWith('test:') ? readCounts(report) : undefined);
  if (!isAlone) console.log(`\n== ${script}\n${output.trimEnd()}`);
  const seconds = ((performance.now() - startMs) / 1000).toFixed(1);
  if (counts.failed > 0) printFailedPages();
  console.log(`== ${script}: ${counts.failed === 0 ? 'good' : 'FAILED'}, ${seconds} s`);
  return counts;
}

/** What was on the page where a browser test failed: on another machine, the only thing to go by. */
function printFailedPages(): void {
  const browserReports = join(reports, 'browser');
  for (const name of existsSync(browserReports) ? readdirSync(browserReports) : []) {
    const context = join(browserReports, name, 'error-context.md');
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
