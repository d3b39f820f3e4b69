import { judgementOf, type Judgement } from './judge';
import type { MeasureJudgement } from './judgeMeasure';

/** Which way the knee goes. */
export type Direction = 'inward' | 'outward';

type Decided = Pick<Judgement, 'decidedBy' | 'measures'>;

/** The measure that a verdict rests on, or lacks. */
export function decidingMeasure({ decidedBy, measures }: Decided): MeasureJudgement {
  return measures.find(({ measure }) => measure === decidedBy)!;
}

/** The measure that says most about a repetition: what its verdict rests on or, where that is missing, the knee angle. */
export function tellingMeasure(judgement: Decided): MeasureJudgement {
  const deciding = decidingMeasure(judgement);
  return deciding.extreme === null ? judgementOf(judgement, 'knee-angle') : deciding;
}

/** The way in which the knee angle came closest to its limit, or went farthest beyond; null where not measured. */
export function kneeDirection(judgement: Pick<Judgement, 'measures'>): Direction | null {
  const { extreme, end } = judgementOf(judgement, 'knee-angle');
  return extreme === null ? null : directionOf[end];
}

/** The way the knee went, where the verdict rests on its angle; null where it rests on another measure, or lacks it. */
export function decidingWay(judgement: Decided): Direction | null {
  return judgement.decidedBy === 'knee-angle' ? kneeDirection(judgement) : null;
}

export const directionOf = { least: 'outward', most: 'inward' } as const;
