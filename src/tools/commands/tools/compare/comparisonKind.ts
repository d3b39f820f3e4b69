import type { z } from 'zod';

/** Something that can be compared from a file. */
export interface ComparisonKind {
  /** What its file holds besides `kind`, as shown with `--help`. */
  holds: string;
  schema: z.ZodType;
  /** The figures, with sentences that say them. */
  compare(input: unknown): Comparison;
}

export interface Comparison {
  sentences: string[];
  [figure: string]: unknown;
}

/** A kind whose comparison takes what its schema gives. */
export function comparisonKind<Schema extends z.ZodType>(
  holds: string,
  schema: Schema,
  compare: (input: z.infer<Schema>) => Comparison,
): ComparisonKind {
  return { holds, schema, compare: (input) => compare(schema.parse(input)) };
}
