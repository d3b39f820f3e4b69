import { findMeasure } from '#core/measures/measures';
import { decidingMeasure, decidingWay } from '#core/scoring/deciding';
import type { Judgement } from '#core/scoring/judge';
import { measureCue, shortCue } from '#words/measureWords';
import type { HeardVerdict } from './guideEvent';

/** What the person hears of a judgement. */
export function heardOf(judgement: Judgement): HeardVerdict {
  const { measure, end } = decidingMeasure(judgement);
  const { isAlwaysLimited } = findMeasure(measure);
  return {
    verdict: judgement.verdict,
    direction: decidingWay(judgement),
    cue: isAlwaysLimited ? null : measureCue(measure, end),
    shortCue: shortCue(measure, end),
  };
}
