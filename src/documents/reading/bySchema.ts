import type { z } from 'zod';
import type { DocumentContent } from './documentKind';

/** Longest part of a message that may quote the data, characters. */
const longestQuote = 200;

/**
 * Makes a reader of a schema.
 *
 * @param faultOf  what the schema can't say: how the parts of a valid document don't fit; null where they do
 */
export function bySchema<Value>(
  schema: z.ZodType<Value>,
  faultOf?: (value: Value) => string | null,
): (data: unknown) => DocumentContent<Value> {
  return (data) => {
    const result = schema.safeParse(data);
    if (!result.success) return { fault: `is damaged at ${whereDamaged(result.error)}` };
    const fault = faultOf?.(result.data) ?? null;
    return fault === null ? { value: result.data } : { fault: `is damaged: ${fault}` };
  };
}

/** The first place that a schema refuses, and why: '"sets.0.task" (Invalid input)'. */
export function whereDamaged({ issues: [issue] }: z.ZodError): string {
  const { path = [], message = 'unknown' } = issue ?? {};
  return `${path.length === 0 ? 'the document' : `"${path.join('.')}"`} (${message.slice(0, longestQuote)})`;
}
