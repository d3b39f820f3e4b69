import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readCounts } from '#tools/commands/tools/readCounts';

function report(content: string): string {
  const path = join(mkdtempSync(join(tmpdir(), 'overfoot-')), 'report.json');
  writeFileSync(path, content);
  return path;
}

describe('readCounts(path)', () => {
  it('counts pending and todo tests of Vitest as skipped', () => {
    const path = report('{"numPassedTests":7,"numFailedTests":2,"numPendingTests":3,"numTodoTests":1}');
    expect(readCounts(path)).toEqual({ passed: 7, failed: 2, skipped: 4 });
  });

  it.each(['', '{}', '{"numPassedTests":"7"}'])('gives null for a report that says %j', (content) => {
    expect(readCounts(report(content))).toBeNull();
  });

  it('gives null where there is no report', () => {
    expect(readCounts('/nowhere/report.json')).toBeNull();
  });

  it('counts a test of Playwright that needed a second try as failed', () => {
    const path = report('{"stats":{"expected":5,"unexpected":1,"flaky":2,"skipped":4}}');
    expect(readCounts(path)).toEqual({ passed: 5, failed: 3, skipped: 4 });
  });
});
