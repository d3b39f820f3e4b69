import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { countPlaywright, countVitest } from '#tools/commands/tools/readCounts';

function report(content: string): string {
  const path = join(mkdtempSync(join(tmpdir(), 'overfoot-')), 'report.json');
  writeFileSync(path, content);
  return path;
}

describe('countVitest(path)', () => {
  it('counts pending and todo tests as skipped', () => {
    const path = report('{"numPassedTests":7,"numFailedTests":2,"numPendingTests":3,"numTodoTests":1}');
    expect(countVitest(path)).toEqual({ passed: 7, failed: 2, skipped: 4 });
  });

  it.each(['', '{}', '{"numPassedTests":"7"}'])('gives null for a report that says %j', (content) => {
    expect(countVitest(report(content))).toBeNull();
  });

  it('gives null where there is no report', () => {
    expect(countVitest('/nowhere/report.json')).toBeNull();
  });
});

describe('countPlaywright(path)', () => {
  it('counts a test that needed a second try as failed', () => {
    const path = report('{"stats":{"expected":5,"unexpected":1,"flaky":2,"skipped":4}}');
    expect(countPlaywright(path)).toEqual({ passed: 5, failed: 3, skipped: 4 });
  });
});
