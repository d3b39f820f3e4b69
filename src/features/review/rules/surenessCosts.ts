import type { Sureness } from '#core/chance/grade';

/**
 * What each sureness costs: of repetitions truly more than 3 degrees from a limit of 10, the share for which a side was
 * named, and the share of those for which it was the right one.
 *
 * Source:  rendered recordings that nothing was set with (fixtures/rendered, groups 'report' and 'last')
 */
export const surenessCosts: Record<Sureness, { decided: number; right: number }> = {
  0.8: { decided: 0.76, right: 1 },
  0.9: { decided: 0.71, right: 1 },
  0.95: { decided: 0.68, right: 1 },
};
