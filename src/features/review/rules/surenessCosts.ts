import type { Sureness } from '#core/chance/grade';

/**
 * What each sureness costs: of repetitions truly more than 3 degrees from a limit of 10, the share for which a side was
 * named, and the share of those for which it was the right one.
 *
 * Source:  rendered recordings that set no constant of joints or yaw (fixtures/rendered, groups 'report', 'last' and
 *   'later'; docs/validation.md); the same with bands as wide as all other recordings make them
 */
export const surenessCosts: Record<Sureness, { decided: number; right: number }> = {
  0.8: { decided: 0.79, right: 1 },
  0.9: { decided: 0.74, right: 1 },
  0.95: { decided: 0.64, right: 1 },
};
