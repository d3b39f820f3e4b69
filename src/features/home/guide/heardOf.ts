import { measureCue } from '#core/exercises/library/measureCue';
import { decidingMeasure, decidingWay } from '#core/scoring/decidingMeasure';
import type { Judgement } from '#core/scoring/judge';
import type { HeardVerdict } from './guideEvent';

/** What the person hears of a judgement. */
export function heardOf(judgement: Judgement): HeardVerdict {
  const measure = decidingMeasure(judgement);
  return {
    verdict: judgement.verdict,
    direction: decidingWay(judgement),
    cue: measure === null ? null : measureCue(measure.measure, measure.end),
  };
}
