import { limitEnds, type LimitEnd } from '#core/measures/limitEnd';
import { findMeasure, type MeasureId } from '#core/measures/measures';
import { shareBeyond } from '#core/measures/shareBeyond';
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

/** How common it is among healthy people to go beyond a limit; null where no study says so. */
export function beyondSentence(id: MeasureId, end: LimitEnd, limit: number): string | null {
  const { healthy } = findMeasure(id).limits[end];
  if (healthy === undefined) return null;
  const tenths = Math.round(10 * shareBeyond(healthy, end, limit));
  const share = tenths < 1 ? 'fewer than 1 of 10' : tenths > 9 ? 'nearly all' : `about ${tenths} of 10`;
  const spread = [healthy.mean, healthy.sd].map(
    (value) => Math.round(10 * value * limitFactor(id, end)) / 10,
  );
  return (
    `Of ${healthy.people}, ${share} went beyond ${limitWords(id, end, limit)}, going by their mean and standard ` +
    `deviation of ${spread[0]} ± ${spread[1]}${findMeasure(id).unit.short} (${healthy.source}).`
  );
}

/** Both limits of the knee angle: '10° inward, 8° outward'. */
export function kneeLimitWords({ 'knee-angle': { least, most } }: Limits): string {
  return `${limitWords('knee-angle', 'most', most)}, ${limitWords('knee-angle', 'least', least)}`;
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
