import type { PlacingCheck, PlacingCheckId } from './placing';

/**
 * What it costs to go on although a check is not good: nothing; exactness, where it can still be measured; measuring,
 * where much of it probably can't; everything, where not even repetitions could be counted, or it would not be safe.
 */
export type PlacingCost = 'nothing' | 'exactness' | 'measuring' | 'everything';

const costs: Record<PlacingCheckId, PlacingCost> = {
  light: 'exactness',
  'one-person': 'everything',
  'whole-body': 'everything',
  distance: 'exactness',
  middle: 'exactness',
  'working-leg': 'measuring',
  square: 'measuring',
  'camera-level': 'exactness',
  'camera-height': 'exactness',
  'frame-rate': 'exactness',
  furniture: 'everything',
};

/** @param first  the check that is in the way; null where none is */
export function placingCost(first: Pick<PlacingCheck, 'id'> | null): PlacingCost {
  return first === null ? 'nothing' : costs[first.id];
}
