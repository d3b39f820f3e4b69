import type { z } from '../schema/zod';
import { ParcelProblem } from './parcelProblem';

/**
 * Reads the first line of a file of parts, which may be anything.
 *
 * @param kind  how such a file is called, as it follows 'It is no': 'session', 'backup'
 * @param whatNext  what to do where it is damaged
 * @throws ParcelProblem  with a sentence that says what is wrong and what to do
 */
export function readHead<Head>(
  line: string,
  schema: z.ZodType<Head>,
  { format, version, kind, whatNext }: { format: string; version: number; kind: string; whatNext: string },
): Head {
  const notOurs = new ParcelProblem(`It is no ${kind} from Overfoot.`);
  let data: unknown;
  try {
    data = JSON.parse(line);
  } catch {
    throw notOurs;
  }
  const said = (typeof data === 'object' && data !== null ? data : {}) as Record<string, unknown>;
  if (said['format'] !== format) throw notOurs;
  if (typeof said['version'] === 'number' && said['version'] > version) {
    throw new ParcelProblem(
      `It is of version ${said['version']}; this program reads up to ${version}. Update the program.`,
    );
  }
  const result = schema.safeParse(data);
  if (result.success) return result.data;
  const { path = [], message = 'unknown' } = result.error.issues[0] ?? {};
  throw new ParcelProblem(`It is damaged at "${path.join('.')}" (${message.slice(0, 200)}). ${whatNext}`);
}
