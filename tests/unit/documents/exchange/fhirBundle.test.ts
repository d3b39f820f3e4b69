import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { buildFhirBundle } from '#documents/exchange/buildFhirBundle';
import type { Resource } from '#documents/exchange/fhirCodes';
import { readFhirBundle } from '#documents/exchange/readFhirBundle';
import { anyExchangeRecord } from '../../../support/exchangeRecords';
import { fhirFaults } from '../../../support/fhirFaults';

interface Entry {
  fullUrl: string;
  resource: Resource;
}
const entriesOf = (bundle: Resource) => bundle['entry'] as Entry[];
/** Many kinds of sessions, and still fast: the schema is large. */
const some = { numRuns: 60 };

describe('buildFhirBundle(record)', () => {
  it('is valid by the schema of FHIR R4, whatever the record', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const bundle = buildFhirBundle(record);
        expect(fhirFaults(bundle)).toEqual([]);
        for (const { resource } of entriesOf(bundle)) expect(fhirFaults(resource)).toEqual([]);
      }),
      some,
    );
  });

  it('is held to a schema that notices faults', () => {
    const [record] = fc.sample(anyExchangeRecord, 1);
    const bundle = buildFhirBundle(record!);
    expect(fhirFaults({ ...bundle, type: 'heap' })).not.toEqual([]);
    expect(fhirFaults({ ...bundle, patient: 'heron' })).not.toEqual([]);
    const [first] = entriesOf(bundle);
    expect(fhirFaults({ ...first!.resource, birthDate: 5 })).not.toEqual([]);
  });

  it('refers only to what is in it or in the plan of another time, each by its own address', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const bundle = buildFhirBundle(record);
        const entries = entriesOf(bundle);
        const addresses = entries.map(({ fullUrl }) => fullUrl.split('/').slice(-2).join('/'));
        expect(new Set(addresses).size).toBe(addresses.length);
        for (const [, found] of JSON.stringify(bundle).matchAll(/"reference":"([^"]+)"/g))
          if (!found!.startsWith('CarePlan/')) expect(addresses).toContain(found);
      }),
      some,
    );
  });

  it('names nobody, has no value that is null, and calls no limit normal', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const bundle = buildFhirBundle(record);
        const patient = entriesOf(bundle)[0]!.resource;
        expect(patient).not.toHaveProperty('name');
        expect(JSON.stringify(bundle)).not.toMatch(/:null|NaN|"normal"|"interpretation"/);
      }),
      some,
    );
  });

  it('says why an angle is missing, and never gives 0 for it', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const components = entriesOf(buildFhirBundle(record)).flatMap(
          ({ resource }) =>
            (resource['component'] ?? []) as { dataAbsentReason?: object; valueQuantity?: object }[],
        );
        for (const { dataAbsentReason, valueQuantity } of components)
          if (dataAbsentReason !== undefined) expect(valueQuantity).toBeUndefined();
        const unmeasured = record.sessions
          .flatMap(({ sets }) => sets)
          .filter(({ result }) => result?.peak === null);
        const absent = components.filter(({ dataAbsentReason }) => dataAbsentReason !== undefined);
        expect(absent.length).toBeGreaterThanOrEqual(unmeasured.length);
      }),
      some,
    );
  });
});

describe('readFhirBundle(bundle)', () => {
  it('reads back all that was written, also through a file', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const file = JSON.stringify(buildFhirBundle(record));
        expect(readFhirBundle(JSON.parse(file))).toEqual(record);
      }),
      { numRuns: 200 },
    );
  });

  it.each([
    [null, 'damaged at the document'],
    [{ resourceType: 'Patient' }, 'damaged at "resourceType"'],
    [{ resourceType: 'Bundle', type: 'collection', timestamp: '', entry: [] }, 'has no patient'],
    [
      {
        resourceType: 'Bundle',
        type: 'collection',
        timestamp: '2026-04-05T06:07:08Z',
        entry: [
          { resource: { resourceType: 'Patient' } },
          { resource: { resourceType: 'Procedure', id: 'x' } },
        ],
      },
      'damaged at "extension"',
    ],
  ])('refuses %j in a sentence', (data, sentence) => {
    expect(() => readFhirBundle(data)).toThrow(sentence);
    expect(() => readFhirBundle(data)).toThrow(/Export it again where it came from\.$/);
  });
});
