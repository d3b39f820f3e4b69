import { z } from 'zod';
import { sessionSchema } from '../../session/sessionDocument';

/** The JSON Schema of session documents, as text. */
export function sessionJsonSchema(): string {
  return `${JSON.stringify(z.toJSONSchema(sessionSchema), null, 2)}\n`;
}
