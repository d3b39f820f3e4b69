import { decidingMeasure, decidingWay } from '#core/scoring/decidingMeasure';
import type { Judgement } from '#core/scoring/judge';
import { measureNames } from './formatMeasure';
import { verdictWords } from './verdictWords';

/**
 * A verdict in words. 'Out of line' includes the way, unless that is shown next to it anyway. A verdict that
 * rests on a measure other than the knee angle names it.
 */
export function verdictLabel(judgement: Judgement, isShort = false): string {
  const { verdict } = judgement;
  const measure = decidingMeasure(judgement);
  if (measure !== null && verdict !== 'in-line')
    return `${verdictWords[verdict]}: ${measureNames[measure.measure].toLowerCase()}`;
  const way = decidingWay(judgement);
  const hasWay = verdict === 'out-of-line' && way !== null && !isShort;
  return hasWay ? `${verdictWords[verdict]} ${way}` : verdictWords[verdict];
}
