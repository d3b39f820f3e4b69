import { normalCdf } from '../statistics/normalCdf';
import type { LimitEnd } from './limitEnd';
import type { HealthyValues } from './measure';

/**
 * How common it is among healthy people to go beyond a limit, if what they do is normally distributed.
 *
 * @param limit  in the measure's own unit and sign
 * @returns  share of them, 0 to 1
 */
export function shareBeyond(
  { mean, sd }: Pick<HealthyValues, 'mean' | 'sd'>,
  end: LimitEnd,
  limit: number,
): number {
  const within = (limit - mean) / sd;
  return normalCdf(end === 'most' ? -within : within);
}
