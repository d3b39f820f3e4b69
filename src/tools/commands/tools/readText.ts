import { existsSync, readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';
import { checkFile } from './checkInput';

/**
 * The text of a file, which may be compressed (`.gz` added to its name).
 *
 * @throws CommandProblem  where there is neither
 */
export function readText(path: string): string {
  const packed = `${path}.gz`;
  if (!existsSync(path) && existsSync(packed)) return gunzipSync(readFileSync(packed)).toString('utf8');
  checkFile(path);
  return readFileSync(path, 'utf8');
}
