import { limitEnds, type LimitEnd } from '#core/measures/limitEnd';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import { addedMeasures, type Limits } from '#core/protocol/limits';
import { measureName } from './formatMeasure';

/** The name of a limit, shown next to its number. */
export function limitName(id: MeasureId, end: LimitEnd): string {
  return findMeasure(id).ways?.[end].long ?? `at ${end}`;
}

/**
 * What a limit is multiplied by to be shown: a direction that has a word is shown without its sign, a share as percent.
 *
 * @returns  never 0
 */
export function limitFactor(id: MeasureId, end: LimitEnd): number {
  const { ways, unit } = findMeasure(id);
  return (end === 'least' && ways !== null ? -1 : 1) * unit.factor;
}

/** The number of a limit with its unit: '6 %'. */
export function limitNumber(id: MeasureId, end: LimitEnd, value: number): string {
  return `${Math.round(10 * value * limitFactor(id, end)) / 10}${findMeasure(id).unit.short}`;
}

/** A limit as it is shown: '6 % inward', 'at most 29 %'. */
export function limitWords(id: MeasureId, end: LimitEnd, value: number): string {
  const number = limitNumber(id, end, value);
  const name = limitName(id, end);
  return findMeasure(id).ways === null ? `${name} ${number}` : `${number} ${name}`;
}

/**
 * All limits besides the knee angle's: 'trunk lean 10° towards the working side, depth at most 29 %'; empty
 * without any.
 */
export function addedLimitsWords(limits: Limits): string {
  return addedMeasures(limits)
    .flatMap((id) =>
      limitEnds.flatMap((end) => {
        const value = limits[id]?.[end];
        return value === undefined ? [] : [`${measureName(id)} ${limitWords(id, end, value)}`];
      }),
    )
    .join(', ');
}
