import { exerciseName } from '#words/exerciseWords';
import { signWords } from '#words/signWords';
import type { ExchangePlan, ExchangeRecord, ExchangeSession } from './exchangeRecord';
import {
  category,
  ownBase,
  ownConcept,
  ownExtension,
  ownSystem,
  painConcept,
  patientReference,
  reference,
  type Resource,
} from './fhirCodes';
import { setObservation } from './setObservation';

/**
 * A patient's record as a bundle of HL7 FHIR R4 (4.0.1), to be handed over as a file.
 *
 * Codes are of published systems only where they are certain; all others are this program's own. A missing value is left
 * out, and of a measurement it says why; it is never 0. A limit is named as the therapist's, never as a reference of
 * healthy people. `readFhirBundle` reads it back.
 */
export function buildFhirBundle(record: ExchangeRecord): Resource {
  const versions = record.sessions.flatMap(({ sets }) =>
    sets.flatMap(({ result }) => (result === null ? [] : [result.measuringVersion])),
  );
  const resources = [
    patientOf(record),
    ...[...new Set(versions)].map(deviceOf),
    ...record.plans.map(carePlanOf),
    ...record.sessions.flatMap(resourcesOfSession),
  ];
  return {
    resourceType: 'Bundle',
    id: 'overfoot-record',
    type: 'collection',
    timestamp: record.at,
    entry: resources.map((resource) => ({
      fullUrl: `${ownBase}/${resource.resourceType}/${resource.id}`,
      resource,
    })),
  };
}

function patientOf({ patient, note }: ExchangeRecord): Resource {
  const system = 'http://terminology.hl7.org/CodeSystem/v3-ObservationValue';
  return {
    resourceType: 'Patient',
    id: 'patient',
    meta: { security: [{ system, code: 'PSEUDED' }] },
    ...(note === '' ? {} : { extension: [{ url: ownExtension('note'), valueString: note }] }),
    ...(patient === '' ? {} : { identifier: [{ system: ownSystem('pseudonym'), value: patient }] }),
  };
}

function deviceOf(measuringVersion: number): Resource {
  return {
    resourceType: 'Device',
    id: `measuring-${measuringVersion}`,
    deviceName: [{ name: 'Overfoot', type: 'model-name' }],
    version: [{ type: { text: 'measuring version' }, value: String(measuringVersion) }],
    note: [{ text: 'Not a certified medical device.' }],
  };
}

function carePlanOf({ id, createdAt, reviewDate, perWeek, items }: ExchangePlan): Resource {
  const timing =
    perWeek === null
      ? {}
      : { scheduledTiming: { repeat: { frequency: perWeek, period: 1, periodUnit: 'wk' } } };
  return {
    resourceType: 'CarePlan',
    id,
    status: 'unknown',
    intent: 'plan',
    subject: patientReference,
    created: createdAt,
    ...(reviewDate === null ? {} : { period: { start: createdAt, end: reviewDate } }),
    activity: items.map(({ task, dose }) => ({
      detail: {
        code: ownConcept('exercise', task, exerciseName(task)),
        status: 'unknown',
        ...timing,
        description: dose,
      },
    })),
  };
}

function resourcesOfSession(session: ExchangeSession): Resource[] {
  const { id, signs, painBefore, painAfter, effort, sets } = session;
  return [
    procedureOf(session),
    ...signs.map((sign, i) => ({
      resourceType: 'Flag',
      id: `${id}-sign-${i}`,
      status: 'active',
      category: [
        { coding: [{ system: 'http://terminology.hl7.org/CodeSystem/flag-category', code: 'safety' }] },
      ],
      code: ownConcept('sign', sign, signWords(sign)),
      subject: patientReference,
      period: { start: session.startedAt },
      identifier: [{ system: ownSystem('session'), value: id }],
    })),
    ...painOf(session, 'before', painBefore),
    ...painOf(session, 'after', painAfter),
    ...(effort === null
      ? []
      : [
          {
            ...observation(session, 'effort'),
            category: category('survey'),
            code: ownConcept('answer', 'effort', 'Effort of the session, 0 to 10'),
            valueInteger: effort,
          },
        ]),
    ...sets.map((set, i) => ({
      ...observation(session, `set-${i}`),
      ...setObservation(set, session.isUnfilmed),
    })),
  ];
}

function procedureOf(session: ExchangeSession): Resource {
  const { id, startedAt, endedAt, planId, state, endedBecause, remark, isUnfilmed, painLimit } = session;
  const limit = painLimit === null ? [] : [{ url: ownExtension('pain-limit'), valueInteger: painLimit }];
  return {
    resourceType: 'Procedure',
    id,
    extension: [...limit, { url: ownExtension('is-unfilmed'), valueBoolean: isUnfilmed }],
    ...(planId === null ? {} : { basedOn: [reference('CarePlan', planId)] }),
    status: state,
    ...(endedBecause === null
      ? {}
      : { statusReason: ownConcept('end-reason', endedBecause, `Ended because: ${endedBecause}`) }),
    code: ownConcept('session', 'home-session', 'Exercise at home'),
    subject: patientReference,
    performedPeriod: { start: startedAt, ...(endedAt === null ? {} : { end: endedAt }) },
    ...(remark === '' ? {} : { note: [{ text: remark }] }),
  };
}

function painOf(session: ExchangeSession, time: 'before' | 'after', score: number | null): Resource[] {
  if (score === null) return [];
  const { painLimit } = session;
  return [
    {
      ...observation(session, `pain-${time}`),
      category: category('survey'),
      code: painConcept(`Pain ${time} the session`),
      valueInteger: score,
      ...(painLimit === null
        ? {}
        : { referenceRange: [{ high: { value: painLimit }, text: 'limit agreed with the therapist' }] }),
    },
  ];
}

function observation({ id, startedAt }: ExchangeSession, name: string) {
  return {
    resourceType: 'Observation',
    id: `${id}-${name}`,
    partOf: [reference('Procedure', id)],
    status: 'final',
    subject: patientReference,
    effectiveDateTime: startedAt,
  };
}
