import type { SignId } from '#core/safety/signs';
import { message } from './messages/message';

/** A warning sign in plain words, as it follows 'Do not exercise if'. */
export function signWords(id: SignId): string {
  return message(`sign.${id}`);
}

/** Who to turn to with it, and how soon. */
export function signAdvice(id: SignId): string {
  return message(`sign.${id}.advice`);
}
