import { freeLegs, wornFootwear } from '#core/conditions/setConditions';
import { feedbackModes } from '#core/protocol/feedback';
import { loadKinds, loadPlaces, type Load } from '#core/protocol/load';
import { supports } from '#core/protocol/support';
import type { ExchangeSet } from './exchangeRecord';
import { ownConcept, quantity } from './fhirCodes';

type Conditions = NonNullable<ExchangeSet['conditions']>;

/** Names of what was noted of how a set was done; the codes of its components. */
const conditionWords = {
  'is-test': 'Done as a test',
  stage: 'Stage of the exercise',
  seat: 'Height of the seat',
  step: 'Height of the step',
  support: 'Support',
  load: 'Load',
  'load-level': 'How heavy, in the practice’s own word',
  'load-place': 'Where the load is worn',
  footwear: 'Footwear',
  'other-leg': 'Where the other leg was held',
  feedback: 'Feedback during the set',
} as const;
type ConditionPart = keyof typeof conditionWords;

export const conditionSystem = 'condition';

/** The conditions of a set as components of its observation; what was not noted is left out. */
export function conditionParts(conditions: ExchangeSet['conditions']): object[] {
  if (conditions === null) return [];
  const { isTest, stage, seatHeightCm, stepHeightCm, support, load, footwear, freeLeg, feedback } =
    conditions;
  return [
    part('is-test', { valueBoolean: isTest }),
    ...(stage === null ? [] : [part('stage', { valueString: stage })]),
    ...height('seat', seatHeightCm),
    ...height('step', stepHeightCm),
    ...choice('support', support),
    ...choice('load', load?.kind ?? null),
    ...(load === null || load.kind === 'none'
      ? []
      : [part('load-level', { valueString: load.level }), ...choice('load-place', load.where)]),
    ...choice('footwear', footwear),
    ...choice('other-leg', freeLeg),
    ...choice('feedback', feedback),
  ];
}

function part(name: ConditionPart, value: object) {
  return { code: ownConcept(conditionSystem, name, conditionWords[name]), ...value };
}

function height(name: 'seat' | 'step', cm: number | null) {
  return cm === null ? [] : [part(name, { valueQuantity: quantity(cm, 'cm') })];
}

function choice(name: ConditionPart, chosen: string | null) {
  if (chosen === null) return [];
  return [part(name, { valueCodeableConcept: ownConcept(name, chosen, chosen.replaceAll('-', ' ')) })];
}

/** The values of a component, as far as they are of use here. */
interface PartValues {
  valueBoolean?: boolean | undefined;
  valueString?: string | undefined;
  valueQuantity?: { value: number } | undefined;
  valueCodeableConcept?: { coding: [{ code: string }] } | undefined;
}

/**
 * Reads back what `conditionParts` writes.
 *
 * @param of  the component with a name; undefined where there is none
 * @returns  null where nothing was noted
 */
export function readConditions(
  of: (name: ConditionPart) => PartValues | undefined,
): ExchangeSet['conditions'] {
  const isTest = of('is-test')?.valueBoolean;
  if (isTest === undefined) return null;
  const code = <Code extends string>(name: ConditionPart, codes: readonly Code[]) =>
    codes.find((known) => known === of(name)?.valueCodeableConcept?.coding[0].code) ?? null;
  return {
    isTest,
    stage: of('stage')?.valueString ?? null,
    seatHeightCm: of('seat')?.valueQuantity?.value ?? null,
    stepHeightCm: of('step')?.valueQuantity?.value ?? null,
    support: code('support', supports),
    load: readLoad(),
    footwear: code('footwear', wornFootwear),
    freeLeg: code('other-leg', freeLegs),
    feedback: code('feedback', feedbackModes),
  } satisfies Conditions;

  function readLoad(): Load | null {
    const kind = code('load', ['none', ...loadKinds]);
    if (kind === null || kind === 'none') return kind && { kind };
    const where = code('load-place', loadPlaces);
    return where === null ? null : { kind, level: of('load-level')?.valueString ?? '', where };
  }
}
