import { CommandProblem } from './commandProblem';
import { readText } from './readText';

/**
 * What a file of JSON holds, which may be compressed.
 *
 * @param wanted  what to give instead where it is not JSON: 'a recording document'
 * @throws CommandProblem  where there is none, or it is not JSON
 */
export function readJson(path: string, wanted: string): unknown {
  const text = readText(path);
  try {
    return JSON.parse(text);
  } catch {
    throw new CommandProblem(`"${path}" is not JSON. Give ${wanted}.`);
  }
}
