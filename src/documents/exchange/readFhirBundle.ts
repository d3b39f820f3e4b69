import { exerciseIds } from '#core/exercises/exercises';
import { Problem } from '#core/problem';
import { sides } from '#core/protocol/side';
import { signIds } from '#core/safety/signs';
import { whereDamaged } from '../reading/bySchema';
import { z } from '../schema/zod';
import { endReasons } from '../session/sessionDocument';
import { sessionStates, type ExchangeRecord, type ExchangeSession, type ExchangeSet } from './exchangeRecord';
import { loinc, ownExtension, ownSystem } from './fhirCodes';
import type { SetPart } from './setObservation';

const conceptOf = <Code extends string>(system: string, codes: readonly Code[]) =>
  z
    .looseObject({
      coding: z.tuple([z.looseObject({ system: z.literal(ownSystem(system)), code: z.enum(codes) })]),
    })
    .transform(({ coding: [{ code }] }) => code);
const idOf = (type: string) =>
  z
    .looseObject({ reference: z.string().startsWith(`${type}/`) })
    .transform(({ reference }) => reference.slice(type.length + 1));
const identifier = z.tuple([z.looseObject({ value: z.string() })]).transform(([{ value }]) => value);
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
const componentSchema = z.looseObject({
  code: z.looseObject({ coding: z.tuple([coding]) }),
  valueInteger: z.int().optional(),
  valueString: z.string().optional(),
  valueQuantity: z.looseObject({ value: z.number() }).optional(),
});
type Component = z.infer<typeof componentSchema>;

const answerSchema = z.looseObject({
  id: z.string(),
  partOf: z.tuple([idOf('Procedure')]),
  valueInteger: score,
});
const setSchema = z.looseObject({
  partOf: z.tuple([idOf('Procedure')]),
  identifier: identifier.optional(),
  code: conceptOf('exercise', exerciseIds),
  bodySite: conceptOf('side', sides),
  device: idOf('Device').optional(),
  component: z.array(componentSchema),
});

const bundleSchema = z.looseObject({
  resourceType: z.literal('Bundle'),
  type: z.literal('collection'),
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
  const all = <Schema extends z.ZodType>(type: string, schema: Schema): z.infer<Schema>[] =>
    entry
      .filter(({ resource }) => resource.resourceType === type)
      .map(({ resource }) => parsed(schema, resource));
  const [patient] = all('Patient', patientSchema);
  if (patient === undefined)
    throw new Problem('file', 'This bundle has no patient. Export it again where it came from.');
  const observations = all('Observation', z.looseObject({}));
  const sets = observations.filter((each) => 'component' in each).map((each) => parsed(setSchema, each));
  const answers = observations
    .filter((each) => !('component' in each))
    .map((each) => parsed(answerSchema, each));
  const flags = all('Flag', flagSchema);
  return {
    patient: patient.identifier ?? '',
    at: timestamp,
    note: patient.extension?.find(({ url }) => url === ownExtension('note'))?.valueString ?? '',
    plans: all('CarePlan', carePlanSchema).map(({ id, created, period, activity }) => ({
      id,
      createdAt: created,
      reviewDate: period?.end ?? null,
      perWeek: activity[0]?.detail.scheduledTiming?.repeat.frequency ?? null,
      items: activity.map(({ detail }) => ({ task: detail.code, dose: detail.description })),
    })),
    sessions: all('Procedure', procedureSchema).map((procedure): ExchangeSession => {
      const { id, extension, basedOn, status, statusReason, performedPeriod, note } = procedure;
      const answer = (name: string) =>
        answers.find((each) => each.id === `${id}-${name}`)?.valueInteger ?? null;
      const extra = (name: string) => extension.find(({ url }) => url === ownExtension(name));
      return {
        id,
        startedAt: performedPeriod.start,
        endedAt: performedPeriod.end ?? null,
        planId: basedOn?.[0] ?? null,
        state: status,
        endedBecause: statusReason ?? null,
        signs: flags.filter((flag) => flag.identifier === id).map(({ code }) => code),
        painBefore: answer('pain-before'),
        painAfter: answer('pain-after'),
        painLimit: extra('pain-limit')?.valueInteger ?? null,
        effort: answer('effort'),
        isUnfilmed: extra('is-unfilmed')?.valueBoolean ?? false,
        remark: note?.[0].text ?? '',
        sets: sets.filter(({ partOf }) => partOf[0] === id).map(readSet),
      };
    }),
  };
}

function readSet({
  identifier: recordingId,
  code,
  bodySite,
  device,
  component,
}: z.infer<typeof setSchema>): ExchangeSet {
  const of = (system: string, wanted: string) =>
    component.find(
      ({
        code: {
          coding: [found],
        },
      }) => found.system === system && found.code === wanted,
    );
  const own = (name: SetPart): Component | undefined => of(ownSystem('set'), name);
  const whole = (name: SetPart) => own(name)?.valueInteger ?? null;
  const amount = (name: SetPart) => own(name)?.valueQuantity?.value ?? null;
  const [meanDeg, semDeg] = [amount('mean-inward-peak'), amount('peak-error')];
  const [low, high, counted] = [whole('in-line-least'), whole('in-line-most'), whole('in-line-of')];
  return {
    recordingId: recordingId ?? null,
    item: whole('item') ?? 0,
    task: code,
    side: bodySite,
    number: whole('number') ?? 1,
    prescribedRepetitions: whole('prescribed-repetitions'),
    painDuring: of(loinc.system, loinc.code)?.valueInteger ?? null,
    cutShort: own('cut-short')?.valueString ?? null,
    heldMs: amount('held'),
    result:
      device === undefined
        ? null
        : {
            measuringVersion: Number(device.slice('measuring-'.length)),
            repetitions: whole('repetitions') ?? 0,
            peak: meanDeg === null || semDeg === null ? null : { meanDeg, semDeg },
            inLine: low === null || high === null || counted === null ? null : { low, high, of: counted },
          },
  };
}

function parsed<Schema extends z.ZodType>(schema: Schema, data: unknown): z.infer<Schema> {
  const result = schema.safeParse(data);
  if (result.success) return result.data;
  throw new Problem(
    'file',
    `This is not a record that was exported here: it is damaged at ${whereDamaged(result.error)}. Export it again where it came from.`,
  );
}
