import { verdictSide } from '#core/scoring/verdict';
import type { PlanItem } from '#documents/plan/planDocument';
import type { HeardVerdict } from '../guide/guideEvent';

/** How a repetition went, as far as the plan wants it shown during the set; otherwise null. */
export function toldOf(heard: HeardVerdict | null, item: PlanItem): HeardVerdict | null {
  if (item.kind === 'hold' || heard === null) return null;
  if (item.feedback === 'every-repetition') return heard;
  return item.feedback === 'only-outside' && verdictSide(heard.verdict) === 'out' ? heard : null;
}
