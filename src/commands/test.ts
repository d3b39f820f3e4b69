import { mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findBrowser } from './tools/findBrowser';
import { projectRoot } from './tools/projectRoot';
import { countPlaywright, countVitest, type Counts } from './tools/readCounts';
import { runCommand } from './tools/runCommand';
import { runStep } from './tools/runStep';

const reports = join(projectRoot, 'test-results');
const vitestReport = join(reports, 'vitest.json');
const playwrightReport = join(reports, 'playwright.json');

interface Step {
  name: string;
  /** A program below node_modules with its words. */
  run: [program: string, ...words: string[]];
  /** Reads how many tests the step ran; without it, the step counts as one. */
  count?: () => Counts | null;
}

const steps: Step[] = [
  { name: 'format', run: ['prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'] },
  ...['tsconfig.json', 'src/tsconfig.pure.json', 'src/tsconfig.worker.json', 'src/tsconfig.node.json'].map(
    (config): Step => ({ name: `types (${config})`, run: ['typescript/bin/tsc', '-p', config] }),
  ),
  { name: 'lint', run: ['eslint/bin/eslint.js', '.'] },
  {
    name: 'arrows between folders',
    run: ['dependency-cruiser/bin/dependency-cruise.mjs', 'src', '--config', '.dependency-cruiser.cjs'],
  },
  {
    name: 'unit tests',
    run: [
      'vitest/vitest.mjs',
      'run',
      '--config',
      'vite.config.ts',
      '--reporter=dot',
      '--reporter=json',
      `--outputFile.json=${vitestReport}`,
    ],
    count: () => countVitest(vitestReport),
  },
  { name: 'build', run: ['vite/bin/vite.js', 'build', '--logLevel', 'warn'] },
  {
    name: 'build of the headless pages',
    run: ['vite/bin/vite.js', 'build', '--config', 'vite.tools.config.ts', '--logLevel', 'warn'],
  },
  {
    name: 'browser tests',
    run: ['@playwright/test/cli.js', 'test', '--config', 'tests/browser/playwright.config.ts'],
    count: () => countPlaywright(playwrightReport),
  },
];

/** Runs every check, whatever the ones before it found; ends with the counts. */
await runCommand(async () => {
  rmSync(reports, { recursive: true, force: true });
  mkdirSync(reports, { recursive: true });
  const total: Counts = { passed: 0, failed: 0, skipped: 0 };
  for (const { name, run, count } of steps) {
    if (name === 'browser tests') findBrowser(); // Installs one now, where there is none.
    console.log(`\n== ${name}`);
    const { isGood, seconds } = runStep(run);
    const counts = stepCounts(isGood, count);
    for (const key of ['passed', 'failed', 'skipped'] as const) total[key] += counts[key];
    console.log(`== ${name}: ${counts.failed === 0 ? 'good' : 'FAILED'}, ${seconds.toFixed(1)} s`);
  }
  const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
  console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`);
  if (total.failed > 0 || total.passed === 0) process.exitCode = 1;
});

/** A step that failed without a failed test of its own (a crash, no report) counts as one failure. */
function stepCounts(isGood: boolean, count: Step['count']): Counts {
  const alone = { passed: isGood ? 1 : 0, failed: isGood ? 0 : 1, skipped: 0 };
  if (count === undefined) return alone;
  const counts = count() ?? { passed: 0, failed: 1, skipped: 0 };
  return isGood || counts.failed > 0 ? counts : { ...counts, failed: 1 };
}
