/** Where this program's own codes are from. The host is reserved for examples: nothing is fetched from it. */
export const ownBase = 'https://overfoot.example/fhir';
export const ownSystem = (name: string) => `${ownBase}/CodeSystem/${name}`;
export const ownExtension = (name: string) => `${ownBase}/StructureDefinition/${name}`;

/** A resource of HL7 FHIR R4, as far as types can say. */
export interface Resource {
  resourceType: string;
  id: string;
  [element: string]: unknown;
}

/** A concept of this program's own. No published code is known for the angle of the knee seen from the front. */
export function ownConcept(system: string, code: string, text: string) {
  return { coding: [{ system: ownSystem(system), code }], text };
}

/** LOINC 72514-3, 'Pain severity - 0-10 verbal numeric rating'; found in the value sets of HL7 Belgium. */
export const loinc = { system: 'http://loinc.org', code: '72514-3' } as const;
export const painConcept = (text: string) => ({ coding: [loinc], text });

/** Category of an observation, from HL7's own list. */
export function category(code: 'survey' | 'therapy' | 'exam') {
  const system = 'http://terminology.hl7.org/CodeSystem/observation-category';
  return [{ coding: [{ system, code }] }];
}

/** Why there is no value, from HL7's own list. */
export function absent(code: 'not-performed' | 'unknown', text: string) {
  const system = 'http://terminology.hl7.org/CodeSystem/data-absent-reason';
  return { coding: [{ system, code }], text };
}

/** What somebody had to do with it, from HL7's own list. */
export function takenPart(code: 'performer' | 'assembler' | 'author' | 'verifier') {
  const system = 'http://terminology.hl7.org/CodeSystem/provenance-participant-type';
  return { coding: [{ system, code }] };
}

/** A quantity in a unit of UCUM. */
export function quantity(value: number, unit: string, code = unit) {
  return { value, unit, system: 'http://unitsofmeasure.org', code };
}

export const reference = (type: string, id: string) => ({ reference: `${type}/${id}` });
export const patientReference = reference('Patient', 'patient');
