import { verdictSide } from '#core/scoring/verdict';
import { message } from '#words/messages/message';
import type { HeardVerdict } from '../guide/guideEvent';

/** A verdict in one or two big words: praise, or what to do; null where there is nothing to say. */
export function heardWords({ verdict, direction, cue }: HeardVerdict): string | null {
  const side = verdictSide(verdict);
  if (side === null) return null;
  if (side === 'in') return message('heard.good');
  if (cue !== null) return cue.split(/[,.]/)[0]!;
  return message(direction === 'inward' ? 'heard.knee-out' : 'heard.knee-in');
}
