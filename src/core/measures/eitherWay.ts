import type { LimitEnd } from './limitEnd';
import type { LimitChoice } from './measure';

/** Limits that are asked for alike in both directions. */
export function eitherWay(
  { max, step, first, source }: Omit<LimitChoice, 'min' | 'healthy'>,
  most: Partial<Pick<LimitChoice, 'source' | 'healthy'>> = {},
): Record<LimitEnd, LimitChoice> {
  return {
    least: { min: -max, max: -step, step, first: -first, source },
    most: { min: step, max, step, first, source, ...most },
  };
}
