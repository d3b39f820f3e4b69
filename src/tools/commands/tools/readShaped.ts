import type { z } from 'zod';
import { CommandProblem } from './commandProblem';
import { readJson } from './readJson';

/**
 * What a file of JSON holds, of the shape that a schema asks for.
 *
 * @param wanted  what the file should hold: 'a set of repetitions'
 * @throws CommandProblem  where it holds something else; names the first place that is wrong
 */
export function readShaped<Value>(path: string, schema: z.ZodType<Value>, wanted: string): Value {
  const result = schema.safeParse(readJson(path, `a file with ${wanted}`));
  if (result.success) return result.data;
  const { path: place, message } = result.error.issues[0]!;
  const where = place.length === 0 ? '' : `${place.join('.')}: `;
  throw new CommandProblem(`"${path}" does not hold ${wanted} (${where}${message}).`);
}
