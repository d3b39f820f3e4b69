import { countInLine, type CountInLine } from '../chance/countInLine';
import { sharedBand, type Extreme } from '../measurement/measureRange';
import { limitEnds } from '../measures/limitEnd';
import type { MeasureId } from '../measures/measures';
import type { Limits } from '../protocol/limits';
import { ninetyPercent } from '../view/errorBand';
import { beyond } from './beyond';
import { decidingMeasure } from './deciding';
import type { Judgement } from './judge';
import { heldExtremes } from './judgeMeasure';

/** A judged repetition with the extremes of what it was judged by. */
export interface JudgedExtremes {
  ranges: {
    [Id in MeasureId]?:
      { min?: Extreme | null | undefined; max?: Extreme | null | undefined } | null | undefined;
  };
  judgement: Pick<Judgement, 'decidedBy' | 'measures' | 'chanceInLine'>;
}

/** Stands in for a shared error of 0, in any unit: far below what is measured. */
const leastSd = 1e-9;

/**
 * How many repetitions of a set were in line, each by the measure that its verdict rests on.
 *
 * What is off about the view is off in every repetition by as much as its own band says. So all of them are counted in
 * standard deviations of their own shared error, which is then one and the same in the whole set.
 *
 * A band of which it is not known what the repetition has by itself counts as shared, which leaves the count as open as it
 * can be.
 *
 * @returns  null where none was measured; repetitions that were not are no part of the count
 */
export function countSet(repetitions: readonly JudgedExtremes[], limits: Limits): CountInLine | null {
  const measured = repetitions.filter(({ judgement }) => judgement.chanceInLine !== null);
  if (measured.length === 0) return null;
  const scaled = measured.map(({ ranges, judgement }) => {
    const { measure, extreme } = decidingMeasure(judgement);
    const sharedSd = Math.max(leastSd, sharedBand(extreme!) / ninetyPercent);
    const { min, max } = ranges[measure] ?? {};
    const held = heldExtremes(measure, { min, max });
    const [least, most] = limitEnds.map((end) => {
      const value = held[end]?.value;
      const excess = value === undefined ? -Infinity : beyond(end, value, limits[measure] ?? {});
      return excess === -Infinity ? undefined : (end === 'least' ? -excess : excess) / sharedSd;
    });
    return { least, most, ownSd: (extreme!.ownBand ?? 0) / ninetyPercent / sharedSd };
  });
  return countInLine(
    scaled,
    { least: 0, most: 0 },
    { sharedSd: 1, ownSds: scaled.map(({ ownSd }) => ownSd) },
  );
}
