import type { KneeState } from '#core/scoring/kneeStateAt';

/**
 * The knee's mark in the mirror, where one picture is read as it is, without an error band: in its lane, or out of it.
 *
 * @param deg  inward positive
 */
export function kneeMark(deg: number, isOutside: boolean): Pick<KneeState, 'verdict' | 'direction'> {
  return { verdict: isOutside ? 'out' : 'in', direction: deg > 0 ? 'inward' : 'outward' };
}
