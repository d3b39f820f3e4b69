import type { LimitEnd, Limits } from '#core/protocol/limits';
import { limitedMeasures, limitEnds } from '#core/protocol/limits';
import type { MeasureId } from '#core/measures/measures';
import { measureNames, measureUnits, measureWays } from './formatMeasure';

/** The name of a limit, shown next to its number. */
export function limitName(measure: MeasureId, end: LimitEnd): string {
  return measureWays[measure]?.[end].long ?? `at ${end}`;
}

/**
 * What a limit is multiplied by to be shown: a direction that has a word is shown without its sign, a share as percent.
 *
 * @returns  never 0
 */
export function limitFactor(measure: MeasureId, end: LimitEnd): number {
  const sign = end === 'least' && measureWays[measure] !== null ? -1 : 1;
  return sign * measureUnits[measure].factor;
}

/** The number of a limit with its unit: '6 %'. */
export function limitNumber(measure: MeasureId, end: LimitEnd, value: number): string {
  return `${Math.round(value * limitFactor(measure, end))}${measureUnits[measure].short}`;
}

/** A limit as it is shown: '6 % inward', 'at most 29 %'. */
export function limitWords(measure: MeasureId, end: LimitEnd, value: number): string {
  const number = limitNumber(measure, end, value);
  const name = limitName(measure, end);
  return measureWays[measure] === null ? `${name} ${number}` : `${number} ${name}`;
}

/**
 * All limits besides the knee angle's: 'trunk lean 10° towards the working side, depth at most 29 %'; empty
 * without any.
 */
export function otherLimitsWords(limits: Limits): string {
  return limitedMeasures(limits)
    .flatMap((id) =>
      limitEnds.flatMap((end) => {
        const value = limits.others?.[id]?.[end];
        return value === undefined ? [] : [`${measureNames[id].toLowerCase()} ${limitWords(id, end, value)}`];
      }),
    )
    .join(', ');
}
