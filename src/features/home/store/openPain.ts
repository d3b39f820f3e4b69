import { skipped } from '../guide/phases/closing';
import type { HomeSet } from './homeState';

/**
 * The sets of which it was not answered yet how much they hurt, by their index. A set that was cut in two when the
 * camera stopped is asked about once.
 */
export function openPain(sets: readonly HomeSet[]): number[] {
  return sets.flatMap(({ result, painDuring }, index) => {
    const isLastPart = sets.findLastIndex((other) => other.result.stepIndex === result.stepIndex) === index;
    return isLastPart && painDuring === null && result.cutShort !== skipped ? [index] : [];
  });
}
