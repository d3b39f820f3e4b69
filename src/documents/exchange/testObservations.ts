import type { AssessmentUnit } from '#core/assessments/assessment';
import { findAssessment } from '#core/assessments/assessments';
import { sides } from '#core/protocol/side';
import type { ExchangeTest } from './exchangeRecord';
import { category, ownConcept, painConcept, patientReference, quantity, type Resource } from './fhirCodes';
import { therapist } from './origin';

/** Names of a test's parts; the codes of its components. */
const partWords = { try: 'One try', 'as-done': 'What the protocol fixes, as it was done' } as const;
const part = (name: keyof typeof partWords, value: object) => ({
  code: ownConcept('test-part', name, partWords[name]),
  ...value,
});

const units: Record<AssessmentUnit, [unit: string, code: string]> = {
  repetitions: ['repetitions', '{#}'],
  points: ['points', '{score}'],
  grade: ['grade', '{score}'],
  cm: ['cm', 'cm'],
  s: ['s', 's'],
  'N/kg': ['N/kg', 'N/kg'],
};

/** A test of function as an observation for each leg that was tried. */
export function testObservations(found: ExchangeTest): Resource[] {
  const { id, at, by, test, asDone, tries, results, worstPain, remark } = found;
  const { name, unit } = findAssessment(test);
  const amount = (value: number) => ({ valueQuantity: quantity(value, ...units[unit]) });
  return sides.flatMap((side): Resource[] => {
    const result = results[side];
    if (result === null) return [];
    return [
      {
        resourceType: 'Observation',
        id: `${id}-${side}`,
        status: 'final',
        category: category('exam'),
        code: ownConcept('test', test, name),
        subject: patientReference,
        effectiveDateTime: at,
        performer: [therapist(by)],
        bodySite: ownConcept('side', side, `${side} leg`),
        ...amount(result),
        ...(remark === '' ? {} : { note: [{ text: remark }] }),
        component: [
          ...tries[side].map((value) => part('try', amount(value))),
          ...(asDone === '' ? [] : [part('as-done', { valueString: asDone })]),
          ...(worstPain === null
            ? []
            : [{ code: painConcept('Pain during the test, at its most'), valueInteger: worstPain }]),
        ],
      },
    ];
  });
}
