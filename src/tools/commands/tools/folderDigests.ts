import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';

/** SHA-256 of every file of a folder, by its path in it. */
export function folderDigests(folder: string): Map<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => statSync(join(folder, path)).isFile())
    .sort();
  return new Map(
    paths.map((path) => [
      path,
      createHash('sha256')
        .update(readFileSync(join(folder, path)))
        .digest('hex'),
    ]),
  );
}

/** What differs between two folders, a line for each file. */
export function digestDifferences(
  one: ReadonlyMap<string, string>,
  other: ReadonlyMap<string, string>,
): string[] {
  const paths = [...new Set([...one.keys(), ...other.keys()])].sort();
  return paths.flatMap((path) => {
    if (!other.has(path)) return [`${path}: only in the first`];
    if (!one.has(path)) return [`${path}: only in the second`];
    return one.get(path) === other.get(path) ? [] : [`${path}: other bytes`];
  });
}
