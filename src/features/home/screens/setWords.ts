import { itemName } from '#documents/plan/itemName';
import type { HomeSet } from '../store/homeState';

/** 'Split-stance sit-to-stand, right leg, set 1'. */
export function setName({ item, result }: Pick<HomeSet, 'item' | 'result'>): string {
  return `${itemName(item)}, ${result.side} leg, set ${result.number}`;
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
  if (heldMs !== null) return `Held for ${Math.round(heldMs / 1000)} seconds in total`;
  const done = counted ?? (isFinal ? found : null);
  if (done !== null)
    return prescribed !== null && prescribed > 0 ? `${done} of ${prescribed} done` : `${done} done`;
  if (keeping !== 'none') return 'Recorded';
  return cutShort === null ? 'Not recorded' : 'You stopped before anything was measured';
}

/** How many sets were done: 'no set', '1 set', '3 sets'. */
export function setWords(sets: number): string {
  if (sets === 0) return 'no set';
  return sets === 1 ? '1 set' : `${sets} sets`;
}
