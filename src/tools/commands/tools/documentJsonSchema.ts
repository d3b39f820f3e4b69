import { z } from 'zod';
import { planSchema } from '#documents/plan/planDocument';
import { sessionSchema } from '#documents/recording/sessionDocument';
import { visitSchema } from '#documents/session/visitDocument';

/** The documents that have a JSON Schema in `docs`. */
export const documentSchemas = { plan: planSchema, session: sessionSchema, visit: visitSchema };

/** The JSON Schema of a kind of document, as text. */
export function documentJsonSchema(kind: keyof typeof documentSchemas): string {
  return jsonSchemaOf(documentSchemas[kind]);
}

/** A schema as JSON Schema, as text. */
export function jsonSchemaOf(schema: z.ZodType): string {
  return `${JSON.stringify(z.toJSONSchema(schema, { unrepresentable: 'any' }), null, 2)}\n`;
}
