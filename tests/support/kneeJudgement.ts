import type { Extreme, MeasureRange } from '#core/measurement/measureRange';
import { mapMeasures, type MeasureId } from '#core/measures/measures';
import type { Direction } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import type { MeasureJudgement } from '#core/scoring/judgeMeasure';

/** Of a measure that was not seen. */
export const noRange: MeasureRange = { min: null, max: null, measuredShare: 0, mainReason: null };

/** Of a repetition in which nothing but the given was measured. */
export function rangesWith(given: Partial<Record<MeasureId, Partial<MeasureRange>>>) {
  return mapMeasures((id): MeasureRange => ({ ...noRange, ...given[id] }));
}

interface KneeParts {
  verdict: Judgement['verdict'];
  direction?: Direction | null;
  worst?: Extreme | null;
  reason?: Judgement['reason'];
}

/** A chance that gets each verdict. */
const chanceOf: Record<Judgement['verdict'], number | null> = {
  in: 1,
  'probably-in': 0.9,
  'cant-tell': 0.5,
  'probably-out': 0.1,
  out: 0,
  'not-measured': null,
};

/** How the knee angle alone was judged. */
export function ofKnee({ verdict, direction, worst = null, reason = null }: KneeParts): MeasureJudgement {
  const end = direction === 'outward' ? 'least' : 'most';
  return { measure: 'knee-angle', verdict, chanceInLine: chanceOf[verdict], reason, end, extreme: worst };
}

/** A judgement that rests on the knee angle, where nothing else has a limit. */
export function kneeJudged(parts: KneeParts & { alignmentScorePct?: number | null }): Judgement {
  const { verdict, reason = null, alignmentScorePct = null } = parts;
  const chanceInLine = chanceOf[verdict];
  return {
    verdict,
    chanceInLine,
    reason,
    decidedBy: 'knee-angle',
    alignmentScorePct,
    measures: [ofKnee(parts)],
  };
}
