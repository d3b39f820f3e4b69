import { sides } from '#core/protocol/side';
import { bearings, onsets } from '../patient/caseEntries';
import { painfulSides, painSites } from '../patient/patientDocument';
import { z } from '../schema/zod';
import type { ExchangeComplaint, ExchangeGoal, ExchangeRecord, ExchangeRestriction } from './exchangeRecord';
import { ownExtension } from './fhirCodes';
import { conceptOf, extensionOf, idOf, type ResourcesOf } from './readingParts';

const site = z.union([
  conceptOf('painful-side', painfulSides).transform((side) => ({ side, site: null })),
  conceptOf('pain-site', painSites).transform((site) => ({ side: null, site })),
]);
const complaintSchema = z
  .looseObject({
    extension: z
      .tuple([z.looseObject({ url: z.literal(ownExtension('onset')), valueCode: z.enum(onsets) })])
      .optional(),
    bodySite: z.array(site).optional(),
    onsetDateTime: z.string().optional(),
  })
  .transform(({ extension, bodySite = [], onsetDateTime = null }): ExchangeComplaint => ({
    painfulSide: bodySite.find(({ side }) => side !== null)?.side ?? null,
    since: onsetDateTime,
    onset: extension?.[0].valueCode ?? null,
    sites: bodySite.flatMap((place) => place.site ?? []),
  }));

const surgerySchema = z
  .looseObject({
    code: z.looseObject({ text: z.string() }),
    performedDateTime: z.string(),
    bodySite: z.tuple([conceptOf('side', sides)]),
  })
  .transform(({ code, performedDateTime, bodySite }) => ({
    what: code.text,
    side: bodySite[0],
    on: performedDateTime,
  }));

const goalSchema = z
  .looseObject({
    description: z.looseObject({ text: z.string() }),
    outcomeReference: z.tuple([idOf('QuestionnaireResponse')]).optional(),
  })
  .transform(({ description, outcomeReference }): ExchangeGoal => ({
    text: description.text,
    questionnaire: outcomeReference?.[0] ?? null,
  }));

const restrictionKinds = ['bend', 'weight-bearing', 'open-chain', 'load', 'in-words'] as const;
const kindSchema = z.looseObject({ code: conceptOf('restriction', restrictionKinds) });
const inWordsSchema = z.looseObject({ code: z.looseObject({ text: z.string() }) });
const prescribedSchema = z
  .looseObject({
    id: z.string(),
    extension: z.array(z.looseObject({ url: z.string() })),
    code: conceptOf('restriction', restrictionKinds),
    period: z.looseObject({ start: z.string(), end: z.string().optional() }),
    author: z.looseObject({ identifier: z.looseObject({ value: z.string() }) }),
  })
  .transform(({ id, extension, code, period, author }, { addIssue }): ExchangeRestriction => {
    const extra = <Value>(name: string, schema: z.ZodType<Value>): Value | undefined =>
      schema.safeParse(extensionOf(extension, name)?.value).data;
    const side = extra('side', z.enum(sides));
    const setBy = extra('set-by', z.string());
    const mostDeg = extra('most-bend-deg', z.number());
    const bearing = extra('bearing', z.enum(bearings));
    if (side !== undefined && setBy !== undefined) {
      const entry = { id, at: period.start, by: author.identifier.value };
      const prescribed = { ...entry, side, setBy, until: period.end ?? null };
      if (code === 'open-chain' || code === 'load') return { ...prescribed, kind: code };
      if (code === 'bend' && mostDeg !== undefined) return { ...prescribed, kind: code, mostDeg };
      if (code === 'weight-bearing' && bearing !== undefined) return { ...prescribed, kind: code, bearing };
    }
    addIssue('A restriction says of which leg it is, who set it, and how far it goes.');
    return z.NEVER;
  });

/** Whether a flag is about what is not allowed; others are warning signs. */
export function isRestriction(flag: unknown): boolean {
  return kindSchema.safeParse(flag).success;
}

/** Reads what `caseResources` writes. */
export function readCase(
  all: ResourcesOf,
): Pick<ExchangeRecord, 'complaint' | 'surgery' | 'goals' | 'restrictions' | 'prescribedRestrictions'> {
  const flags = (isInWords: boolean) => (flag: unknown) =>
    isRestriction(flag) && (kindSchema.parse(flag).code === 'in-words') === isInWords;
  return {
    complaint: all('Condition', complaintSchema)[0] ?? null,
    surgery: all('Procedure', surgerySchema, isSurgery)[0] ?? null,
    goals: all('Goal', goalSchema),
    restrictions: all('Flag', inWordsSchema, flags(true))[0]?.code.text ?? '',
    prescribedRestrictions: all('Flag', prescribedSchema, flags(false)),
  };
}

const surgeryCode = z.looseObject({ code: conceptOf('surgery', ['knee-surgery']) });

/** Whether a procedure is an operation; others are sessions. */
export function isSurgery(procedure: unknown): boolean {
  return surgeryCode.safeParse(procedure).success;
}
