import { findMeasure } from '#core/measures/measures';
import { decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { verdictSide } from '#core/scoring/verdict';
import { measureName } from './formatMeasure';
import { verdictWords } from './verdictWords';

/**
 * A verdict in words. 'Out of line' includes the way, unless that is shown next to it anyway. A verdict that
 * rests on a measure other than the knee angle names it.
 */
export function verdictLabel(judgement: Judgement, isShort = false): string {
  const { verdict, decidedBy } = judgement;
  const side = verdictSide(verdict);
  if (!findMeasure(decidedBy).isAlwaysLimited && side !== 'in')
    return `${verdictWords(verdict)}: ${measureName(decidedBy)}`;
  const way = decidingWay(judgement);
  const hasWay = side === 'out' && way !== null && !isShort;
  return hasWay ? `${verdictWords(verdict)} ${way}` : verdictWords(verdict);
}
