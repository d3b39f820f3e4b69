import type { Direction, Judgement } from './judge';
import type { MeasureJudgement } from './judgeMeasure';

type Decided = Pick<Judgement, 'decidedBy' | 'direction' | 'measures'>;

/** The measure beside the knee angle that a verdict rests on, or lacks; null where it is the knee's. */
export function decidingMeasure({
  decidedBy,
  measures,
}: Omit<Decided, 'direction'>): MeasureJudgement | null {
  return measures.find(({ measure }) => measure === decidedBy) ?? null;
}

/** The way the knee went, where the verdict rests on it; null where it rests on another measure, or on nothing. */
export function decidingWay({ decidedBy, direction }: Omit<Decided, 'measures'>): Direction | null {
  return decidedBy === 'knee-angle' ? direction : null;
}
