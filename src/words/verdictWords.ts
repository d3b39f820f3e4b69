import type { Verdict } from '#core/scoring/verdict';
import { message } from './messages/message';

/** A verdict as shown on screens and in tables. */
export function verdictWords(verdict: Verdict): string {
  return message(`verdict.${verdict}`);
}
