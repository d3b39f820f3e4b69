import { z } from 'zod';
import { librarySchema } from '#documents/library/libraryDocument';
import { patientSchema } from '#documents/patient/patientDocument';
import { planSchema } from '#documents/plan/planDocument';
import { recordingSchema } from '#documents/recording/recordingDocument';
import { sessionSchema } from '#documents/session/sessionDocument';

/** The documents that have a JSON Schema in `docs`. */
export const documentSchemas = {
  library: librarySchema,
  patient: patientSchema,
  plan: planSchema,
  recording: recordingSchema,
  session: sessionSchema,
};

/** The JSON Schema of a kind of document, as text. */
export function documentJsonSchema(kind: keyof typeof documentSchemas): string {
  return jsonSchemaOf(documentSchemas[kind]);
}

/** A schema as JSON Schema, as text. */
export function jsonSchemaOf(schema: z.ZodType): string {
  return `${JSON.stringify(z.toJSONSchema(schema, { unrepresentable: 'any' }), null, 2)}\n`;
}
