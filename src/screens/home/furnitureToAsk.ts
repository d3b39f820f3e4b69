import type { Placing, PlacingCheck } from '../../placing/placing';

/** The question whether chair or step stands firm, as long as it is open; null where it is answered or not asked. */
export function furnitureToAsk(placing: Placing | null): PlacingCheck | null {
  return placing?.checks.find(({ id, state }) => id === 'furniture' && state !== 'good') ?? null;
}
