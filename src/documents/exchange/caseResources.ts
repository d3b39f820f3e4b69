import { restrictionWords } from '../patient/restrictionWords';
import type { ExchangeComplaint, ExchangeGoal, ExchangeRecord, ExchangeRestriction } from './exchangeRecord';
import { ownConcept, ownExtension, patientReference, reference, type Resource } from './fhirCodes';
import { therapist } from './origin';

/** What the practice noted of a patient: the complaint, an operation, goals, and what is not allowed. */
export function caseResources(record: ExchangeRecord): Resource[] {
  const { complaint, surgery, goals, restrictions, prescribedRestrictions } = record;
  const today = record.at.slice(0, 10);
  return [
    ...(complaint === null ? [] : [conditionOf(complaint)]),
    ...(surgery === null ? [] : [surgeryOf(surgery, today)]),
    ...goals.map((goal, i) => goalOf(goal, `goal-${i}`, complaint !== null)),
    ...(restrictions === '' ? [] : [restrictionInWords(restrictions)]),
    ...prescribedRestrictions.map((restriction) => restrictionFlag(restriction, today)),
  ];
}

/** A complaint is no diagnosis: how certain one is, and whether it still lasts, is not noted and not said. */
function conditionOf({ painfulSide, since, onset, sites }: ExchangeComplaint): Resource {
  const knee = painfulSide === 'both' ? 'both knees' : `${painfulSide} knee`;
  const bodySite = [
    ...(painfulSide === null ? [] : [ownConcept('painful-side', painfulSide, knee)]),
    ...sites.map((site) => ownConcept('pain-site', site, site)),
  ];
  return {
    resourceType: 'Condition',
    id: 'complaint',
    ...(onset === null ? {} : { extension: [{ url: ownExtension('onset'), valueCode: onset }] }),
    code: ownConcept('condition', 'knee-pain', 'Pain at the knee, as the patient points to it; no diagnosis'),
    ...(bodySite.length === 0 ? {} : { bodySite }),
    subject: patientReference,
    ...(since === null ? {} : { onsetDateTime: since }),
  };
}

function surgeryOf({ what, side, on }: NonNullable<ExchangeRecord['surgery']>, today: string): Resource {
  return {
    resourceType: 'Procedure',
    id: 'surgery',
    status: on <= today ? 'completed' : 'preparation',
    code: ownConcept('surgery', 'knee-surgery', what),
    subject: patientReference,
    performedDateTime: on,
    bodySite: [ownConcept('side', side, `${side} leg`)],
  };
}

const goalWords = { noted: 'Noted in words', 'own-activity': 'An activity that the patient named' } as const;

function goalOf({ text, questionnaire }: ExchangeGoal, id: string, hasComplaint: boolean): Resource {
  const kind = questionnaire === null ? 'noted' : 'own-activity';
  return {
    resourceType: 'Goal',
    id,
    lifecycleStatus: 'active',
    category: [ownConcept('goal', kind, goalWords[kind])],
    description: { text },
    subject: patientReference,
    ...(hasComplaint ? { addresses: [reference('Condition', 'complaint')] } : {}),
    ...(questionnaire === null
      ? {}
      : { outcomeReference: [reference('QuestionnaireResponse', questionnaire)] }),
  };
}

const restrictionCategory = [ownConcept('flag', 'restriction', 'What is not allowed for a time')];

function restrictionInWords(text: string): Resource {
  return {
    resourceType: 'Flag',
    id: 'restrictions',
    status: 'active',
    category: restrictionCategory,
    code: ownConcept('restriction', 'in-words', text),
    subject: patientReference,
  };
}

function restrictionFlag(restriction: ExchangeRestriction, today: string): Resource {
  const { id, kind, at, by, side, setBy, until } = restriction;
  const extra = (name: string, value: object) => ({ url: ownExtension(name), ...value });
  return {
    resourceType: 'Flag',
    id,
    extension: [
      extra('side', { valueCode: side }),
      extra('set-by', { valueString: setBy }),
      ...(kind === 'bend' ? [extra('most-bend-deg', { valueDecimal: restriction.mostDeg })] : []),
      ...(kind === 'weight-bearing' ? [extra('bearing', { valueCode: restriction.bearing })] : []),
    ],
    status: until === null || until >= today ? 'active' : 'inactive',
    category: restrictionCategory,
    code: ownConcept('restriction', kind, restrictionWords({ ...restriction, withdrawn: null })),
    subject: patientReference,
    period: { start: at, ...(until === null ? {} : { end: until }) },
    author: therapist(by),
  };
}
