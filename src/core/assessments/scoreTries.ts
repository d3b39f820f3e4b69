import { max, mean, min } from 'd3-array';
import { requireFinite } from '../statistics/requireFinite';
import type { Assessment } from './assessment';

/**
 * The result of one leg from its tries.
 *
 * @param tries  in the test's unit, 0 or above; fewer than the protocol asks for are taken as they are
 * Missing: null without a try, where the test was not done or had to be ended
 * @throws  RangeError where a try is below 0, beyond the end of the test, or not a finite number
 */
export function scoreTries({ protocol, better, most }: Assessment, tries: readonly number[]): number | null {
  requireFinite(tries);
  const wrong = tries.find((value) => value < 0 || (most !== null && value > most));
  if (wrong !== undefined)
    throw new RangeError(`A try is 0 or above${most === null ? '' : `, and ${most} at most`}, got ${wrong}.`);
  if (tries.length === 0) return null;
  if (protocol.tries.taken === 'mean') return mean(tries)!;
  return better === 'less' ? min(tries)! : max(tries)!;
}
