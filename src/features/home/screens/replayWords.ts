import { decidingMeasure } from '#core/scoring/deciding';
import { verdictSide } from '#core/scoring/verdict';
import { capitalised } from '#words/capitalised';
import { habitSentence } from '#words/measureWords';
import { message } from '#words/messages/message';
import { placesWords } from '#words/placesWords';
import type { ReplayPick } from '../rules/pickReplays';

type Shown = Pick<ReplayPick, 'kind' | 'place' | 'judgement'>;

/** What a repetition is shown for; one that may have been in line is nothing to practise. */
export function replayTitle({ kind, judgement }: Pick<Shown, 'kind' | 'judgement'>): string {
  if (kind === 'best') return message('replay.best');
  return message(verdictSide(judgement.verdict) === 'out' ? 'replay.practise' : 'replay.nearest');
}

/** What there is to see in it. */
export function replaySentence({ kind, place, judgement }: Shown): string {
  const which = placesWords([place]);
  const side = verdictSide(judgement.verdict);
  if (kind === 'best') {
    return message(side === 'in' ? 'replay.stayed' : 'replay.closest', { which });
  }
  if (side === 'out') {
    const { measure, end } = decidingMeasure(judgement);
    return habitSentence(measure, end, which);
  }
  return capitalised(message(side === 'in' ? 'replay.edge-stayed' : 'replay.edge', { which }));
}
