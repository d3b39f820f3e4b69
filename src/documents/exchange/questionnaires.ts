import { buildQuestionnaireResponse, ordinalValueUrl } from '../questionnaire/buildQuestionnaireResponse';
import { z } from '../schema/zod';
import type { ExchangeQuestionnaire } from './exchangeRecord';
import { ownExtension, patientReference, type Resource } from './fhirCodes';
import { therapist } from './origin';

/** A questionnaire as it was answered, with its title and its score by a published rule as extensions of our own. */
export function questionnaireResponse(record: ExchangeQuestionnaire): Resource {
  const { by, title, version, score } = record;
  return {
    ...buildQuestionnaireResponse(record, ''),
    extension: [
      { url: ownExtension('questionnaire-title'), valueString: title },
      ...(version === null ? [] : [{ url: ownExtension('questionnaire-version'), valueString: version }]),
      ...(score === null ? [] : [{ url: ownExtension('questionnaire-score'), valueDecimal: score }]),
    ],
    subject: patientReference,
    source: patientReference,
    author: therapist(by),
  };
}

const answer = z
  .looseObject({
    valueInteger: z.int().optional(),
    valueDecimal: z.number().optional(),
    valueString: z.string().optional(),
    valueBoolean: z.boolean().optional(),
    valueDate: z.string().optional(),
    valueCoding: z
      .looseObject({
        extension: z.array(z.looseObject({ url: z.string(), valueDecimal: z.number() })).optional(),
        system: z.string().optional(),
        code: z.string(),
        display: z.string().optional(),
      })
      .optional(),
  })
  .transform(
    (
      { valueInteger, valueDecimal, valueString, valueBoolean, valueDate, valueCoding },
      { addIssue },
    ): ExchangeQuestionnaire['answers'][number]['answers'][number] => {
      if (valueInteger !== undefined) return { kind: 'whole', value: valueInteger };
      if (valueDecimal !== undefined) return { kind: 'number', value: valueDecimal };
      if (valueString !== undefined) return { kind: 'text', value: valueString };
      if (valueBoolean !== undefined) return { kind: 'yes-no', value: valueBoolean };
      if (valueDate !== undefined) return { kind: 'date', value: valueDate };
      if (valueCoding === undefined) {
        addIssue('An answer needs a value of a known kind.');
        return z.NEVER;
      }
      const { extension, system = null, code, display = '' } = valueCoding;
      const points = extension?.find(({ url }) => url === ordinalValueUrl)?.valueDecimal ?? null;
      return { kind: 'choice', system, code, display, points };
    },
  );

/** What `questionnaireResponse` writes. */
export const questionnaireResponseSchema = z
  .looseObject({
    id: z.string(),
    meta: z.looseObject({ lastUpdated: z.string() }),
    extension: z.array(
      z.looseObject({
        url: z.string(),
        valueString: z.string().optional(),
        valueDecimal: z.number().optional(),
      }),
    ),
    questionnaire: z.string().optional(),
    identifier: z.looseObject({ value: z.string() }).optional(),
    author: z.looseObject({ identifier: z.looseObject({ value: z.string() }) }),
    authored: z.string(),
    item: z.array(
      z.looseObject({ linkId: z.string(), text: z.string().optional(), answer: z.array(answer).optional() }),
    ),
  })
  .transform(
    ({
      id,
      meta,
      extension,
      questionnaire = '',
      identifier,
      author,
      authored,
      item,
    }): ExchangeQuestionnaire => {
      const extra = (name: string) =>
        extension.find(({ url }) => url === ownExtension(`questionnaire-${name}`));
      const version = extra('version')?.valueString ?? null;
      return {
        id,
        at: meta.lastUpdated,
        by: author.identifier.value,
        on: authored,
        of:
          identifier?.value ??
          (version === null ? questionnaire : questionnaire.slice(0, -`|${version}`.length)),
        version,
        title: extra('title')?.valueString ?? '',
        score: extra('score')?.valueDecimal ?? null,
        answers: item.map(({ linkId, text = '', answer: answers = [] }) => ({
          linkId,
          question: text,
          answers,
        })),
      };
    },
  );
