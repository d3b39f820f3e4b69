import type { MissingReason } from '#core/measurement/curve';
import { message } from './messages/message';

/** Why there is no number, and what to change. */
export function reasonWords(reason: MissingReason): { short: string; advice: string } {
  return { short: message(`reason.${reason}`), advice: message(`reason.${reason}.advice`) };
}
