import { readFileSync } from 'node:fs';
import { z } from 'zod';

export interface Counts {
  passed: number;
  failed: number;
  skipped: number;
}

const vitestSchema = z
  .object({
    numPassedTests: z.int(),
    numFailedTests: z.int(),
    numPendingTests: z.int(),
    numTodoTests: z.int().default(0),
  })
  .transform((report) => ({
    passed: report.numPassedTests,
    failed: report.numFailedTests,
    skipped: report.numPendingTests + report.numTodoTests,
  }));

/** A test that passed at the second try is flaky, and counts as failed: a test must not depend on luck. */
const playwrightSchema = z
  .object({ stats: z.object({ expected: z.int(), unexpected: z.int(), flaky: z.int(), skipped: z.int() }) })
  .transform(({ stats }) => ({
    passed: stats.expected,
    failed: stats.unexpected + stats.flaky,
    skipped: stats.skipped,
  }));

/** Counts from Vitest's or Playwright's JSON report; null where there is none. */
export function readCounts(path: string): Counts | null {
  try {
    return z.union([vitestSchema, playwrightSchema]).parse(JSON.parse(readFileSync(path, 'utf8')));
  } catch {
    return null;
  }
}
