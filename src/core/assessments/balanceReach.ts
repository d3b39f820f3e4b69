import { mean } from 'd3-array';
import { requireFinite } from '../statistics/requireFinite';

export interface BalanceReach {
  /** Of the leg's length, percent. */
  frontPct: number;
  backInwardPct: number;
  backOutwardPct: number;
  /** Mean of the three. */
  compositePct: number;
}

/**
 * Reaches of one leg against its length, so that tall and small people can be told side by side.
 *
 * @param reachCm  the best of each direction, 0 or above
 * @param legCm  from the front of the hip to the inner ankle, above 0
 * @throws  RangeError where a length is out of range
 * Source:  Gribble 2013 for the three directions; composite as in common use (from memory)
 */
export function balanceReach(
  reachCm: { front: number; backInward: number; backOutward: number },
  legCm: number,
): BalanceReach {
  const { front, backInward, backOutward } = reachCm;
  requireFinite([front, backInward, backOutward, legCm]);
  if (!(Math.min(front, backInward, backOutward) >= 0 && legCm > 0))
    throw new RangeError(`Reaches are 0 or above and a leg is longer than 0, got a leg of ${legCm}.`);
  const share = (cm: number) => (100 * cm) / legCm;
  return {
    frontPct: share(front),
    backInwardPct: share(backInward),
    backOutwardPct: share(backOutward),
    compositePct: share(mean([front, backInward, backOutward])!),
  };
}
