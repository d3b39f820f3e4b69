import { group } from 'd3-array';
import { assessmentIds } from '#core/assessments/assessments';
import { exerciseIds } from '#core/exercises/exercises';
import { Problem } from '#core/problem';
import { swellings } from '#core/programme/stageCourse';
import { sides, type Side } from '#core/protocol/side';
import { signIds } from '#core/safety/signs';
import { z } from '../schema/zod';
import { endReasons } from '../session/sessionDocument';
import { questionnaire } from './answers';
import { narrativeText } from './composition';
import { conditionSystem, readConditions } from './conditionParts';
import {
  handKinds,
  sessionStates,
  type ExchangeRecord,
  type ExchangeSession,
  type ExchangeSet,
  type ExchangeTest,
} from './exchangeRecord';
import { loinc, ownExtension, ownSystem } from './fhirCodes';
import { questionnaireResponseSchema } from './questionnaires';
import { isRestriction, isSurgery, readCase } from './readCase';
import { conceptOf, identifier, idOf, notOurs, parsed, type ResourcesOf } from './readingParts';
import { remarksSchema } from './remarks';
import type { SetPart } from './setObservation';
import { reopenedSchema, settledSchema } from './settlements';
import { loggedSchema } from './signedEntries';

const score = z.int().min(0).max(10);

const patientSchema = z.looseObject({
  identifier: identifier.optional(),
  extension: z.array(z.looseObject({ url: z.string(), valueString: z.string() })).optional(),
});

const carePlanSchema = z.looseObject({
  id: z.string(),
  created: z.string(),
  period: z.looseObject({ end: z.string() }).optional(),
  activity: z.array(
    z.looseObject({
      detail: z.looseObject({
        code: conceptOf('exercise', exerciseIds),
        scheduledTiming: z.looseObject({ repeat: z.looseObject({ frequency: z.int() }) }).optional(),
        description: z.string(),
      }),
    }),
  ),
});

const procedureSchema = z.looseObject({
  id: z.string(),
  extension: z.array(
    z.looseObject({ url: z.string(), valueInteger: score.optional(), valueBoolean: z.boolean().optional() }),
  ),
  basedOn: z.tuple([idOf('CarePlan')]).optional(),
  status: z.enum(sessionStates),
  statusReason: conceptOf('end-reason', endReasons).optional(),
  performedPeriod: z.looseObject({ start: z.string(), end: z.string().optional() }),
  note: z.tuple([z.looseObject({ text: z.string() })]).optional(),
});

const flagSchema = z.looseObject({ identifier, code: conceptOf('sign', signIds) });

const coding = z.looseObject({ system: z.string(), code: z.string() });
const amount = z.looseObject({ value: z.number() });
const componentSchema = z.looseObject({
  code: z.looseObject({ coding: z.tuple([coding]) }),
  valueInteger: z.int().optional(),
  valueString: z.string().optional(),
  valueBoolean: z.boolean().optional(),
  valueQuantity: amount.optional(),
  valueCodeableConcept: z.looseObject({ coding: z.tuple([coding]) }).optional(),
  referenceRange: z.tuple([z.looseObject({ low: amount, high: amount })]).optional(),
});
type Component = z.infer<typeof componentSchema>;

const observationSchema = z.looseObject({
  category: z.tuple([z.looseObject({ coding: z.tuple([coding]) })]).transform(
    ([
      {
        coding: [{ code }],
      },
    ]) => code,
  ),
});
const testSchema = z.looseObject({
  id: z.string(),
  code: conceptOf('test', assessmentIds),
  effectiveDateTime: z.string(),
  performer: z.tuple([z.looseObject({ identifier: z.looseObject({ value: z.string() }) })]),
  bodySite: conceptOf('side', sides),
  valueQuantity: amount,
  note: z.tuple([z.looseObject({ text: z.string() })]).optional(),
  component: z.array(componentSchema),
});
const answerSchema = z.looseObject({
  id: z.string(),
  effectiveDateTime: z.string(),
  valueInteger: score.optional(),
  valueCodeableConcept: conceptOf('swelling', swellings).optional(),
});
const setSchema = z.looseObject({
  id: z.string(),
  partOf: z.tuple([idOf('Procedure')]),
  identifier: identifier.optional(),
  code: conceptOf('exercise', exerciseIds),
  bodySite: conceptOf('side', sides),
  device: idOf('Device').optional(),
  component: z.array(componentSchema),
  note: remarksSchema.optional(),
});

type FhirSet = z.infer<typeof setSchema>;

const instrumentSchema = z.looseObject({
  id: z.string(),
  version: z.tuple([z.looseObject({ value: z.string() }), z.looseObject({ value: z.string() })]),
});
const provenanceSchema = z.looseObject({
  target: z.tuple([idOf('Observation')]),
  recorded: z.string(),
  activity: conceptOf('activity', ['recorded', ...handKinds]),
  reason: z.tuple([z.looseObject({ text: z.string() })]).optional(),
  agent: z.array(
    z.looseObject({
      who: z.looseObject({ identifier: z.looseObject({ value: z.string() }).optional() }),
    }),
  ),
});
type Provenance = z.infer<typeof provenanceSchema>;

const compositionSchema = z.looseObject({
  title: z.string(),
  section: z
    .array(
      z.looseObject({ title: z.string().optional(), text: z.looseObject({ div: z.string() }).optional() }),
    )
    .optional(),
});

const bundleSchema = z.looseObject({
  resourceType: z.literal('Bundle'),
  type: z.enum(['collection', 'document']),
  timestamp: z.string(),
  entry: z.array(z.looseObject({ resource: z.looseObject({ resourceType: z.string() }) })),
});

/**
 * Reads back what `buildFhirBundle` writes. Resources of kinds that it does not write are left aside.
 *
 * @throws Problem  with a sentence that says what is wrong and what to do
 */
export function readFhirBundle(data: unknown): ExchangeRecord {
  const { entry, timestamp } = parsed(bundleSchema, data);
  const all: ResourcesOf = (type, schema, only = () => true) =>
    entry
      .filter(({ resource }) => resource.resourceType === type && only(resource))
      .map(({ resource }) => parsed(schema, resource));
  const [patient] = all('Patient', patientSchema);
  if (patient === undefined)
    throw new Problem('file', 'This bundle has no patient. Export it again where it came from.');
  const [composition] = all('Composition', compositionSchema);
  const observations = all('Observation', observationSchema);
  const of = <Schema extends z.ZodType>(kind: string, schema: Schema): z.infer<Schema>[] =>
    observations.filter(({ category }) => category === kind).map((each) => parsed(schema, each));
  const sets = of('therapy', setSchema);
  const answers = of('survey', answerSchema);
  const instruments = all('Device', z.looseObject({}))
    .filter((each) => 'version' in each)
    .map((each) => parsed(instrumentSchema, each));
  const isLogged = (each: unknown) => loggedSchema.safeParse(each).success;
  const isSettled = (each: unknown) => settledSchema.safeParse(each).success;
  const isReopened = (each: unknown) => reopenedSchema.safeParse(each).success;
  const provenances = all(
    'Provenance',
    provenanceSchema,
    (each) => !isSettled(each) && !isReopened(each) && !isLogged(each),
  );
  const settled = all('Provenance', settledSchema, isSettled);
  const reopened = all('Provenance', reopenedSchema, isReopened);
  const log = all('Provenance', loggedSchema, isLogged);
  const flags = all('Flag', flagSchema, (flag) => !isRestriction(flag));
  const setOf = (set: FhirSet) =>
    readSet(
      set,
      instruments.find(({ id }) => id === set.device),
      provenances.filter(({ target: [id] }) => id === set.id),
    );
  return {
    patient: patient.identifier ?? '',
    at: timestamp,
    note: patient.extension?.find(({ url }) => url === ownExtension('note'))?.valueString ?? '',
    report:
      composition === undefined
        ? null
        : {
            title: composition.title,
            lines: (composition.section ?? []).flatMap(({ title = '', text }) =>
              text === undefined ? [] : [{ head: title, text: narrativeText(text.div) }],
            ),
          },
    ...readCase(all),
    log,
    plans: all('CarePlan', carePlanSchema).map(({ id, created, period, activity }) => ({
      id,
      createdAt: created,
      reviewDate: period?.end ?? null,
      perWeek: activity[0]?.detail.scheduledTiming?.repeat.frequency ?? null,
      items: activity.map(({ detail }) => ({ task: detail.code, dose: detail.description })),
    })),
    sessions: all('Procedure', procedureSchema, (each) => !isSurgery(each)).map(
      (procedure): ExchangeSession => {
        const { id, extension, basedOn, status, statusReason, performedPeriod, note } = procedure;
        const found = (name: string) => answers.find((each) => each.id === `${id}-${name}`);
        const answer = (name: string) => found(name)?.valueInteger ?? null;
        const bothKnees = (time: 'before' | 'after') => ({
          left: answer(`pain-${time}-left`),
          right: answer(`pain-${time}-right`),
        });
        const swelling = found('day-after-swelling');
        const extra = (name: string) => extension.find(({ url }) => url === ownExtension(name));
        return {
          id,
          startedAt: performedPeriod.start,
          endedAt: performedPeriod.end ?? null,
          planId: basedOn?.[0] ?? null,
          state: status,
          endedBecause: statusReason ?? null,
          signs: flags.filter((flag) => flag.identifier === id).map(({ code }) => code),
          settled: settled.flatMap(({ sessionId, settlement }) => (sessionId === id ? [settlement] : [])),
          reopened: reopened.find(({ sessionId }) => sessionId === id)?.reopened ?? null,
          painBefore: answer('pain-before'),
          painAfter: answer('pain-after'),
          painBySide:
            found('pain-before-left') === undefined
              ? null
              : { before: bothKnees('before'), after: bothKnees('after') },
          painLimit: extra('pain-limit')?.valueInteger ?? null,
          dayAfter:
            swelling === undefined
              ? null
              : {
                  answeredAt: swelling.effectiveDateTime,
                  worst: answer('day-after-pain'),
                  swelling: swelling.valueCodeableConcept ?? null,
                },
          effort: answer('effort'),
          isUnfilmed: extra('is-unfilmed')?.valueBoolean ?? false,
          remark: note?.[0].text ?? '',
          sets: sets.filter(({ partOf }) => partOf[0] === id).map(setOf),
        };
      },
    ),
    tests: readTests(of('exam', testSchema)),
    // Those of sessions say the same as the observations.
    questionnaires: all('QuestionnaireResponse', z.looseObject({ questionnaire: z.string().optional() }))
      .filter((response) => response.questionnaire !== questionnaire['url'])
      .map((response) => parsed(questionnaireResponseSchema, response)),
  };
}

/** One observation is of one leg; both of a test follow each other. */
function readTests(found: readonly z.infer<typeof testSchema>[]): ExchangeTest[] {
  return [...group(found, ({ id, bodySite }) => id.slice(0, -`-${bodySite}`.length))].map(([id, legs]) => {
    const { code, effectiveDateTime, performer, note, component } = legs[0]!;
    const leg = (side: Side) => legs.find(({ bodySite }) => bodySite === side);
    const tries = (side: Side) =>
      (leg(side)?.component ?? []).flatMap((part) =>
        isPart(part, ownSystem('test-part'), 'try') ? (part.valueQuantity?.value ?? []) : [],
      );
    const result = (side: Side) => leg(side)?.valueQuantity.value ?? null;
    const asDone = component.find((part) => isPart(part, ownSystem('test-part'), 'as-done'));
    const worstPain = component.find((part) => isPart(part, loinc.system, loinc.code));
    return {
      id,
      at: effectiveDateTime,
      by: performer[0].identifier.value,
      test: code,
      asDone: asDone?.valueString ?? '',
      tries: { left: tries('left'), right: tries('right') },
      results: { left: result('left'), right: result('right') },
      worstPain: worstPain?.valueInteger ?? null,
      remark: note?.[0].text ?? '',
    };
  });
}

function isPart({ code: { coding } }: Component, system: string, code: string): boolean {
  return coding[0].system === system && coding[0].code === code;
}

function readSet(
  { identifier: recordingId, code, bodySite, component, note }: FhirSet,
  instrument: z.infer<typeof instrumentSchema> | undefined,
  provenances: readonly Provenance[],
): ExchangeSet {
  const of = (system: string, code: string) => component.find((part) => isPart(part, system, code));
  const own = (name: SetPart): Component | undefined => of(ownSystem('set'), name);
  const whole = (name: SetPart) => own(name)?.valueInteger ?? null;
  const recorded = provenances.find(({ activity }) => activity === 'recorded')?.recorded;
  return {
    recordingId: recordingId ?? null,
    item: whole('item') ?? 0,
    task: code,
    side: bodySite,
    number: whole('number') ?? 1,
    prescribedRepetitions: whole('prescribed-repetitions'),
    painDuring: of(loinc.system, loinc.code)?.valueInteger ?? null,
    cutShort: own('cut-short')?.valueString ?? null,
    heldMs: own('held')?.valueQuantity?.value ?? null,
    conditions: readConditions((name) => of(ownSystem(conditionSystem), name)),
    result:
      instrument === undefined || recorded === undefined
        ? null
        : {
            ...readFigures(own),
            ...readOrigin(instrument, recorded, provenances),
            remarks: note ?? [],
          },
  };
}

function readFigures(own: (name: SetPart) => Component | undefined) {
  const whole = (name: SetPart) => own(name)?.valueInteger ?? null;
  const mean = own('mean-inward-peak');
  const [meanDeg, semDeg] = [mean?.valueQuantity?.value, own('peak-error')?.valueQuantity?.value];
  const [low, high, counted] = [whole('in-line-least'), whole('in-line-most'), whole('in-line-of')];
  const limits = mean?.referenceRange?.[0];
  if (limits === undefined) throw new Problem('file', notOurs('the limits of a set'));
  return {
    bendsFilmed: own('bends-filmed')?.valueBoolean ?? false,
    repetitions: whole('repetitions') ?? 0,
    peak: meanDeg === undefined || semDeg === undefined ? null : { meanDeg, semDeg },
    inLine: low === null || high === null || counted === null ? null : { low, high, of: counted },
    limitsDeg: { least: limits.low.value, most: limits.high.value },
  };
}

function readOrigin(
  { version: [measuring, network] }: z.infer<typeof instrumentSchema>,
  recordedAt: string,
  provenances: readonly Provenance[],
) {
  return {
    recordedAt,
    measuringVersion: Number(measuring.value),
    network: network.value,
    hands: provenances.flatMap(({ activity, recorded, reason, agent }) =>
      activity === 'recorded'
        ? []
        : [
            {
              what: activity,
              said: reason?.[0].text ?? '',
              by: agent[0]?.who.identifier?.value ?? '',
              at: recorded,
            },
          ],
    ),
  };
}
