import { findMeasure } from '#core/measures/measures';
import { decidingMeasure } from '#core/scoring/deciding';
import { verdictSide } from '#core/scoring/verdict';
import { capitalised } from '#words/capitalised';
import { ordinalWord } from '#words/ordinalWord';
import type { ReplayPick } from '../rules/pickReplays';

type Shown = Pick<ReplayPick, 'kind' | 'place' | 'judgement'>;

/** What a repetition is shown for; one that may have been in line is nothing to practise. */
export function replayTitle({ kind, judgement }: Pick<Shown, 'kind' | 'judgement'>): string {
  if (kind === 'best') return 'Your best one';
  return verdictSide(judgement.verdict) === 'out' ? 'One to practise' : 'Nearest to the edge';
}

/** What there is to see in it. */
export function replaySentence({ kind, place, judgement }: Shown): string {
  const which = `the ${ordinalWord(place)} repetition`;
  const side = verdictSide(judgement.verdict);
  if (kind === 'best') {
    return side === 'in'
      ? `In ${which} you stayed in the lane.`
      : `In ${which} you came closest to staying in the lane.`;
  }
  if (side === 'out') {
    const { measure, end } = decidingMeasure(judgement);
    return `In ${which} ${findMeasure(measure).habits[end]}.`;
  }
  return side === 'in'
    ? `${capitalised(which)} came nearest to the edge, and stayed in the lane.`
    : `${capitalised(which)} came nearest to the edge. It is too close to say more.`;
}
