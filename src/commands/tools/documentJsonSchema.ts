import { z } from 'zod';
import { sessionSchema } from '../../session/sessionDocument';
import { visitSchema } from '../../session/visitDocument';

/** The documents that have a JSON Schema in `docs`. */
export const documentSchemas = { session: sessionSchema, visit: visitSchema };

/** The JSON Schema of a kind of document, as text. */
export function documentJsonSchema(kind: keyof typeof documentSchemas): string {
  return `${JSON.stringify(z.toJSONSchema(documentSchemas[kind]), null, 2)}\n`;
}
