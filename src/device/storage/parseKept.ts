import type { z } from 'zod';
import { Problem } from '#core/problem';
import type { Records, TableName } from './records';
import type { Listed } from './repository';
import { storageProblem } from './storageProblem';

/**
 * Checks a record that this program keeps for itself.
 *
 * @throws StorageProblem  'damaged'
 */
export function parseKept<Value>(value: unknown, schema: z.ZodType<Value>): Value {
  const result = schema.safeParse(value);
  if (!result.success) throw storageProblem('damaged', result.error);
  return result.data;
}

/** Reads a whole table; a record that can't be read does not block the others. */
export async function listKept<Value>(
  records: Records,
  table: TableName,
  read: (value: unknown) => Value,
): Promise<Listed<Value>> {
  const listed: Listed<Value> = { found: [], unreadable: [] };
  for (const { key, value } of await records.list(table)) {
    try {
      if (value instanceof Problem) throw value;
      listed.found.push(read(value));
    } catch (error) {
      if (!(error instanceof Problem)) throw error;
      listed.unreadable.push({ id: key, sentence: error.message });
    }
  }
  return listed;
}

/** Reads one record; null where there is none. */
export async function findKept<Value>(
  records: Records,
  table: TableName,
  key: string,
  read: (value: unknown) => Value,
): Promise<Value | null> {
  const value = await records.get(table, key);
  return value === undefined ? null : read(value);
}
