import type { Extreme } from '../measurement/measureRange';
import type { Ends } from './measure';

/** The end of a range that lies farther from 0. */
export function farther({ max, min }: Ends): Extreme | null {
  if (max === null || min === null) return max ?? min;
  return Math.abs(min.value) > Math.abs(max.value) ? min : max;
}
