import { writeFileSync } from 'node:fs';
import { CommandProblem } from './commandProblem';

/**
 * Writes a value as JSON.
 *
 * @param spaces  indent for reading by eye; 0 for long number lists
 * @throws CommandProblem  where the file can't be written
 */
export function writeJson(path: string, value: unknown, spaces = 0): void {
  try {
    writeFileSync(path, `${JSON.stringify(value, null, spaces)}\n`);
  } catch (error) {
    throw new CommandProblem(
      `"${path}" can't be written (${error instanceof Error ? error.message : 'unknown error'}). Choose another place.`,
    );
  }
}
