import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { projectRoot } from './projectRoot';

/** Runs a program below node_modules and shows what it prints. */
export function runStep([program, ...words]: [string, ...string[]]): { isGood: boolean; seconds: number } {
  const startMs = performance.now();
  const path = join(projectRoot, 'node_modules', program);
  const { status } = spawnSync(process.execPath, [path, ...words], { cwd: projectRoot, stdio: 'inherit' });
  return { isGood: status === 0, seconds: (performance.now() - startMs) / 1000 };
}
