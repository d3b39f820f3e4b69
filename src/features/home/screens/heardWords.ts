import { verdictSide } from '#core/scoring/verdict';
import { message } from '#words/messages/message';
import type { HeardVerdict } from '../guide/guideEvent';

/** A verdict in one or two big words: praise, or what to do; null where there is nothing to say. */
export function heardWords({ verdict, shortCue }: Pick<HeardVerdict, 'verdict' | 'shortCue'>): string | null {
  const side = verdictSide(verdict);
  if (side === null) return null;
  return side === 'in' ? message('heard.good') : shortCue;
}
