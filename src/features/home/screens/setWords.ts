import { itemName } from '#documents/plan/itemName';
import { message } from '#words/messages/message';
import type { HomeSet } from '../store/homeState';

/** 'Split-stance sit-to-stand, right leg, set 1'. */
export function setName({ item, result }: Pick<HomeSet, 'item' | 'result'>): string {
  return message('set.name', { exercise: itemName(item), side: result.side, number: result.number });
}

/**
 * How much of a set was done: '3 of 3 done'.
 *
 * @param isFinal  whether what was found in its recording changes no more
 */
export function doneWords(
  { result, found, keeping }: Pick<HomeSet, 'result' | 'found' | 'keeping'>,
  isFinal: boolean,
): string {
  const { heldMs, counted, prescribed, cutShort } = result;
  if (heldMs !== null) return message('set.held', { seconds: Math.round(heldMs / 1000) });
  const done = counted ?? (isFinal ? found : null);
  if (done !== null)
    return prescribed !== null && prescribed > 0
      ? message('set.done-of', { done, of: prescribed })
      : message('set.done', { done });
  if (keeping !== 'none') return message('set.recorded');
  return message(cutShort === null ? 'set.not-recorded' : 'set.stopped');
}
