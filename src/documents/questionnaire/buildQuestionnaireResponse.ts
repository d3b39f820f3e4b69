import type { QuestionnaireAnswer, QuestionnaireRecord } from '../patient/caseEntries';

/** Where FHIR R4 puts what an answer counts. */
export const ordinalValueUrl = 'http://hl7.org/fhir/StructureDefinition/ordinalValue';

/**
 * A questionnaire as it was answered, as a FHIR R4 QuestionnaireResponse. Who answered is a pseudonym.
 *
 * A group is not kept with the answers, so all questions stand in one row.
 */
export function buildQuestionnaireResponse(
  { id, at, of, version, on, answers }: Omit<QuestionnaireRecord, 'withdrawn'>,
  pseudonym: string,
) {
  const isUrl = /^\S+:\S+$/.test(of);
  return {
    resourceType: 'QuestionnaireResponse',
    id,
    ...(isUrl ? { questionnaire: version === null ? of : `${of}|${version}` } : {}),
    ...(isUrl ? {} : { identifier: { value: of } }),
    status: 'completed',
    subject: { display: pseudonym },
    authored: on,
    meta: { lastUpdated: at },
    item: answers.map(({ linkId, question, answers: given }) => ({
      linkId,
      ...(question === '' ? {} : { text: question }),
      ...(given.length === 0 ? {} : { answer: given.map(valueOf) }),
    })),
  };
}

function valueOf(answer: QuestionnaireAnswer): object {
  switch (answer.kind) {
    case 'whole':
      return { valueInteger: answer.value };
    case 'number':
      return { valueDecimal: answer.value };
    case 'text':
      return { valueString: answer.value };
    case 'yes-no':
      return { valueBoolean: answer.value };
    case 'date':
      return { valueDate: answer.value };
    case 'choice': {
      const { system, code, display, points } = answer;
      const extension = [{ url: ordinalValueUrl, valueDecimal: points }];
      return {
        valueCoding: {
          ...(points === null ? {} : { extension }),
          ...(system === null ? {} : { system }),
          code,
          ...(display === '' ? {} : { display }),
        },
      };
    }
  }
}
