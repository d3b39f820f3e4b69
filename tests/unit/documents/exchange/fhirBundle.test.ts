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
interface AnswerItem {
  linkId: string;
  answer?: { valueInteger?: number }[];
  item?: AnswerItem[];
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

  it('gives each answer as it was given, and as an observation with the same value', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const resources = entriesOf(buildFhirBundle(record)).map(({ resource }) => resource);
        for (const session of record.sessions) {
          const given = resources.filter(({ id }) =>
            [`${session.id}-answers`, `${session.id}-day-after`].includes(id),
          );
          const items = given.flatMap((response) => response['item'] as AnswerItem[]);
          const scores = items.flatMap(({ linkId, answer, item }) =>
            [...(answer ?? []), ...(item ?? []).flatMap((inner) => inner.answer ?? [])].flatMap(
              ({ valueInteger }) => (valueInteger === undefined ? [] : [[linkId, valueInteger] as const]),
            ),
          );
          const { painBefore, painAfter, effort, dayAfter, sets } = session;
          const asked = [painBefore, painAfter, effort, dayAfter?.worst ?? null];
          for (const [linkId, value] of scores) {
            if (linkId === 'set') continue;
            const observation = resources.find(({ id }) => id === `${session.id}-${linkId}`);
            expect(observation?.['valueInteger']).toBe(value);
          }
          expect(scores.filter(([linkId]) => linkId === 'set').map(([, value]) => value)).toEqual(
            sets.flatMap(({ painDuring }) => painDuring ?? []),
          );
          expect(scores.length).toBeGreaterThanOrEqual(asked.filter((one) => one !== null).length);
        }
      }),
      some,
    );
  });

  it('begins with the report where there is one, as a document with an identifier', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const bundle = buildFhirBundle(record);
        const [first] = entriesOf(bundle);
        expect(bundle['type']).toBe(record.report === null ? 'collection' : 'document');
        expect(first!.resource.resourceType).toBe(record.report === null ? 'Patient' : 'Composition');
        expect('identifier' in bundle).toBe(record.report !== null);
      }),
      some,
    );
  });

  it('says of each measured set where it comes from, and of each hand who it was', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const resources = entriesOf(buildFhirBundle(record)).map(({ resource }) => resource);
        for (const { id, sets } of record.sessions)
          sets.forEach(({ result }, i) => {
            const target = { reference: `Observation/${id}-set-${i}` };
            const found = resources.filter(
              ({ resourceType, target: of }) =>
                resourceType === 'Provenance' && JSON.stringify(of) === JSON.stringify([target]),
            );
            expect(found.length).toBe(result === null ? 0 : 1 + result.hands.length);
            if (result !== null) expect(found[0]!['recorded']).toBe(result.recordedAt);
          });
      }),
      some,
    );
  });

  it('tells a session that was stopped or not done with its reason', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const resources = entriesOf(buildFhirBundle(record)).map(({ resource }) => resource);
        for (const { id, state, endedBecause } of record.sessions) {
          const procedure = resources.find((one) => one.resourceType === 'Procedure' && one.id === id)!;
          expect(procedure['status']).toBe(state);
          expect(JSON.stringify(procedure['statusReason'] ?? '')).toContain(endedBecause ?? '');
        }
      }),
      some,
    );
  });

  it('keeps a warning sign active until a therapist signs that it is settled, and again once it is opened again', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const resources = entriesOf(buildFhirBundle(record)).map(({ resource }) => resource);
        for (const { id, signs, settled, reopened } of record.sessions)
          signs.forEach((_, i) => {
            const flag = resources.find((one) => one.id === `${id}-sign-${i}`)!;
            const isSigned = settled.some(
              ({ by, at }) => by === 'therapist' && (reopened === null || at > reopened.at),
            );
            expect(flag['status']).toBe(isSigned ? 'inactive' : 'active');
          });
      }),
      some,
    );
  });

  it('tells a restriction that has ended from one that still counts', () => {
    const [any] = fc.sample(anyExchangeRecord, 1);
    const entry = { at: '2026-04-01T08:00:00.000Z', by: 'AB', side: 'right' as const, setBy: 'the surgeon' };
    const prescribedRestrictions = ['2026-05-01', '2026-05-02', null].map((until, i) => ({
      ...{ id: `restriction-${i}`, ...entry, until, kind: 'bend' as const, mostDeg: 60 },
    }));
    const at = '2026-05-02T10:00:00.000Z';
    const flags = entriesOf(buildFhirBundle({ ...any!, at, restrictions: '', prescribedRestrictions }))
      .map(({ resource }) => resource)
      .filter(({ id }) => id.startsWith('restriction-'));
    expect(flags.map(({ status, code }) => [status, (code as { text: string }).text])).toEqual([
      ['inactive', 'the right knee bends to 60° at most'],
      ['active', 'the right knee bends to 60° at most'],
      ['active', 'the right knee bends to 60° at most'],
    ]);
  });

  it('calls a complaint no diagnosis, and says neither how certain it is nor that it lasts', () => {
    fc.assert(
      fc.property(anyExchangeRecord, (record) => {
        const condition = entriesOf(buildFhirBundle(record))
          .map(({ resource }) => resource)
          .find(({ resourceType }) => resourceType === 'Condition');
        expect(condition === undefined).toBe(record.complaint === null);
        if (condition === undefined) return;
        expect((condition['code'] as { text: string }).text).toContain('no diagnosis');
        expect(condition).not.toHaveProperty('verificationStatus');
        expect(condition).not.toHaveProperty('clinicalStatus');
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
