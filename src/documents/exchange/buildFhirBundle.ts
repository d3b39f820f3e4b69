import { exerciseName } from '#words/exerciseWords';
import { signWords } from '#words/signWords';
import { answersOf, questionnaire } from './answers';
import { caseResources } from './caseResources';
import { compositionOf } from './composition';
import type { ExchangePlan, ExchangeRecord, ExchangeSession } from './exchangeRecord';
import {
  ownBase,
  ownConcept,
  ownExtension,
  ownSystem,
  patientReference,
  reference,
  type Resource,
} from './fhirCodes';
import {
  instrumentDevice,
  instrumentOf,
  instrumentsOf,
  program,
  provenanceOf,
  type Instrument,
} from './origin';
import { questionnaireResponse } from './questionnaires';
import { annotationsOf } from './remarks';
import { setObservation } from './setObservation';
import { settlementsOf, signedAsSettled } from './settlements';
import { logResources } from './signedEntries';
import { testObservations } from './testObservations';

/**
 * A patient's record as a bundle of HL7 FHIR R4 (4.0.1), to be handed over as a file: a collection, or with a report a
 * document, which begins with that report.
 *
 * Codes are of published systems only where they are certain; all others are this program's own. A missing value is left
 * out, and of a measurement it says why; it is never 0. A limit is named as the therapist's, never as a reference of
 * healthy people. `readFhirBundle` reads it back.
 */
export function buildFhirBundle(record: ExchangeRecord): Resource {
  const { report, at, sessions } = record;
  const instruments = instrumentsOf(record);
  const parts = sessions.flatMap((session) => resourcesOfSession(session, instruments));
  const resources = [
    ...(report === null
      ? []
      : [
          compositionOf(
            report,
            at,
            sessions.map(({ id }) => id),
          ),
        ]),
    patientOf(record),
    program,
    ...instruments.map(instrumentDevice),
    ...(parts.some(({ resourceType }) => resourceType === 'QuestionnaireResponse') ? [questionnaire] : []),
    ...caseResources(record),
    ...record.plans.map(carePlanOf),
    ...parts,
    ...record.tests.flatMap(testObservations),
    ...record.questionnaires.map(questionnaireResponse),
    ...logResources(record.log),
  ];
  return {
    resourceType: 'Bundle',
    id: 'overfoot-record',
    ...(report === null
      ? { type: 'collection' }
      : { identifier: { system: ownSystem('document'), value: at }, type: 'document' }),
    timestamp: at,
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

function resourcesOfSession(session: ExchangeSession, instruments: readonly Instrument[]): Resource[] {
  const { id, startedAt, signs, sets, isUnfilmed } = session;
  const settledAt = signedAsSettled(session);
  return [
    procedureOf(session),
    ...settlementsOf(session),
    ...signs.map((sign, i) => ({
      resourceType: 'Flag',
      id: `${id}-sign-${i}`,
      status: settledAt === null ? 'active' : 'inactive',
      category: [
        { coding: [{ system: 'http://terminology.hl7.org/CodeSystem/flag-category', code: 'safety' }] },
      ],
      code: ownConcept('sign', sign, signWords(sign)),
      subject: patientReference,
      period: { start: startedAt, ...(settledAt === null ? {} : { end: settledAt }) },
      identifier: [{ system: ownSystem('session'), value: id }],
    })),
    ...answersOf(session),
    ...sets.flatMap((set, i) => {
      const setId = `${id}-set-${i}`;
      const instrument = set.result === null ? undefined : instrumentOf(instruments, set.result);
      return [
        {
          resourceType: 'Observation',
          id: setId,
          partOf: [reference('Procedure', id)],
          status: 'final',
          subject: patientReference,
          effectiveDateTime: startedAt,
          ...(instrument === undefined ? {} : { device: reference('Device', instrument.id) }),
          ...setObservation(set, isUnfilmed),
          ...(set.result === null || set.result.remarks.length === 0
            ? {}
            : { note: annotationsOf(set.result.remarks) }),
        },
        ...(set.result === null || instrument === undefined
          ? []
          : provenanceOf(setId, set.result, instrument)),
      ];
    }),
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
