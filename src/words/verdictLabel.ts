import { findMeasure } from '#core/measures/measures';
import { decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { measureName } from './formatMeasure';
import { verdictWords } from './verdictWords';

/**
 * A verdict in words. 'Out of line' includes the way, unless that is shown next to it anyway. A verdict that
 * rests on a measure other than the knee angle names it.
 */
export function verdictLabel(judgement: Judgement, isShort = false): string {
  const { verdict, decidedBy } = judgement;
  if (!findMeasure(decidedBy).isAlwaysLimited && verdict !== 'in-line')
    return `${verdictWords[verdict]}: ${measureName(decidedBy)}`;
  const way = decidingWay(judgement);
  const hasWay = verdict === 'out-of-line' && way !== null && !isShort;
  return hasWay ? `${verdictWords[verdict]} ${way}` : verdictWords[verdict];
}
