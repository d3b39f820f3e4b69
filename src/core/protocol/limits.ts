import { clamp } from '../clamp';
import { limitEnds, type LimitEnd } from '../measures/limitEnd';
import {
  findMeasure,
  mapAlwaysLimited,
  measureIds,
  type AlwaysLimitedId,
  type MeasureId,
} from '../measures/measures';

/** The least and the most of a measure that is in line; an end without a limit is left out. */
export type EndLimits = { [End in LimitEnd]?: number | undefined };

/**
 * How far a repetition may go before it counts as out of line, in each measure's own unit and sign
 * (docs/measurement.md); a measure without a limit is left out.
 */
export type Limits = { [Id in AlwaysLimitedId]: Record<LimitEnd, number> } & {
  [Id in Exclude<MeasureId, AlwaysLimitedId>]?: EndLimits | undefined;
};

/** Those that are in force before others are set. Where they come from: each measure says. */
export const defaultLimits: Limits = mapAlwaysLimited((_, { limits }) => ({
  least: limits.least.first,
  most: limits.most.first,
}));

/** The measures that have a limit, either way. */
export function limitedMeasures(limits: Limits): MeasureId[] {
  return measureIds.filter((id) => limitEnds.some((end) => limits[id]?.[end] !== undefined));
}

/** The measures that have a limit besides those that always do. */
export function addedMeasures(limits: Limits): MeasureId[] {
  return limitedMeasures(limits).filter((id) => !findMeasure(id).isAlwaysLimited);
}

/**
 * Limits with one of them set, moved or, with null, taken away; of a measure that always has both, the one that is
 * proposed first then holds again.
 *
 * A value is brought into its range and kept on its side of the opposite limit.
 *
 * @param value  in the measure's own unit and sign
 */
export function withLimit(limits: Limits, id: MeasureId, end: LimitEnd, value: number | null): Limits {
  const { isAlwaysLimited, limits: choices } = findMeasure(id);
  const wanted = value === null && isAlwaysLimited ? choices[end].first : value;
  const { [id]: before = {}, ...rest } = limits;
  const { [end]: _, ...opposite } = before;
  const ends = wanted === null ? opposite : { ...opposite, [end]: fitting(id, end, wanted, before) };
  return (Object.keys(ends).length === 0 ? rest : { ...rest, [id]: ends }) as Limits;
}

function fitting(id: MeasureId, end: LimitEnd, value: number, { least, most }: EndLimits): number {
  const within = inRange(id, end, value);
  return end === 'least' ? Math.min(within, most ?? within) : Math.max(within, least ?? within);
}

/** Limits with each of them brought into its range. */
export function limitsInRange(limits: Limits): Limits {
  const measures = limitedMeasures(limits).map((id) => {
    const ends = limitEnds.flatMap((end) => {
      const value = limits[id]?.[end];
      return value === undefined ? [] : [[end, inRange(id, end, value)]];
    });
    return [id, Object.fromEntries(ends)];
  });
  return Object.fromEntries(measures) as Limits;
}

function inRange(id: MeasureId, end: LimitEnd, value: number): number {
  const { min, max } = findMeasure(id).limits[end];
  return clamp(value, min, max);
}
