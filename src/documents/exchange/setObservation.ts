import { findExercise } from '#core/exercises/exercises';
import { exerciseName } from '#words/exerciseWords';
import { conditionParts } from './conditionParts';
import type { ExchangeResult, ExchangeSet } from './exchangeRecord';
import { absent, category, ownConcept, ownSystem, painConcept, quantity } from './fhirCodes';

/** Names of a set's parts; the codes of its components. */
const partWords = {
  item: 'Place of the item in the plan, from 0',
  number: 'Number of the set, from 1',
  'prescribed-repetitions': 'Repetitions prescribed',
  'cut-short': 'Why the set ended before its time',
  held: 'Time held',
  repetitions: 'Complete repetitions',
  'mean-inward-peak': 'Mean largest inward knee angle, seen from the front, less own standing',
  'peak-error': 'Standard error of that angle',
  'in-line-least': 'Repetitions in line, at least (5 % quantile)',
  'in-line-most': 'Repetitions in line, at most (95 % quantile)',
  'in-line-of': 'Repetitions of which that was counted',
  'bends-filmed': 'Easy bends were filmed before the set, from which the view is read',
} as const;
export type SetPart = keyof typeof partWords;

const part = (name: SetPart, value: object) => ({ code: ownConcept('set', name, partWords[name]), ...value });
const whole = (name: SetPart, value: number | null) =>
  value === null ? [] : [part(name, { valueInteger: value })];

/** What an observation says of a set, besides whose it is and when it was done. */
export function setObservation(set: ExchangeSet, isUnfilmed: boolean) {
  const {
    recordingId,
    item,
    task,
    side,
    number,
    prescribedRepetitions,
    painDuring,
    cutShort,
    heldMs,
    conditions,
    result,
  } = set;
  return {
    ...(recordingId === null ? {} : { identifier: [{ system: ownSystem('recording'), value: recordingId }] }),
    category: category('therapy'),
    code: ownConcept('exercise', task, exerciseName(task)),
    bodySite: ownConcept('side', side, `${side} leg`),
    component: [
      ...whole('item', item),
      ...whole('number', number),
      ...whole('prescribed-repetitions', prescribedRepetitions),
      ...(painDuring === null
        ? []
        : [{ code: painConcept('Pain during the set, at its most'), valueInteger: painDuring }]),
      ...(cutShort === null ? [] : [part('cut-short', { valueString: cutShort })]),
      ...(heldMs === null ? [] : [part('held', { valueQuantity: quantity(heldMs, 'ms') })]),
      ...conditionParts(conditions),
      ...(findExercise(task).kind === 'hold' && result === null ? [] : figures(result, isUnfilmed)),
    ],
  };
}

function figures(result: ExchangeResult | null, isUnfilmed: boolean) {
  if (result === null) {
    const why = isUnfilmed
      ? absent('not-performed', 'done without filming')
      : absent('unknown', 'no recording');
    return [part('mean-inward-peak', { dataAbsentReason: why })];
  }
  const { repetitions, peak, inLine, bendsFilmed, limitsDeg } = result;
  const limits = {
    low: quantity(limitsDeg.least, '°', 'deg'),
    high: quantity(limitsDeg.most, '°', 'deg'),
    text: 'limits that the set was judged by, inward above 0; no reference of healthy people',
  };
  return [
    ...whole('repetitions', repetitions),
    part('bends-filmed', { valueBoolean: bendsFilmed }),
    part('mean-inward-peak', {
      ...(peak === null
        ? { dataAbsentReason: absent('unknown', 'too few repetitions were measured') }
        : { valueQuantity: quantity(peak.meanDeg, '°', 'deg') }),
      referenceRange: [limits],
    }),
    ...(peak === null ? [] : [part('peak-error', { valueQuantity: quantity(peak.semDeg, '°', 'deg') })]),
    ...(inLine === null
      ? [part('in-line-least', { dataAbsentReason: absent('unknown', 'no repetition was measured') })]
      : [
          ...whole('in-line-least', inLine.low),
          ...whole('in-line-most', inLine.high),
          ...whole('in-line-of', inLine.of),
        ]),
  ];
}
