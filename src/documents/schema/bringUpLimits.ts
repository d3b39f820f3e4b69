import { isFields } from './isFields';

/**
 * Makes limits as documents hold them now of limits of an older version, which named those of the knee angle apart
 * from the others, without a sign. Anything else stays as it is.
 */
export function bringUpLimits(limits: unknown): unknown {
  if (!isFields(limits) || !('kneeInwardDeg' in limits || 'kneeOutwardDeg' in limits)) return limits;
  const { kneeInwardDeg, kneeOutwardDeg, others = {}, ...rest } = limits;
  const least = typeof kneeOutwardDeg === 'number' ? -kneeOutwardDeg : kneeOutwardDeg;
  return {
    'knee-angle': { least, most: kneeInwardDeg },
    ...(isFields(others) ? others : { others }),
    ...rest,
  };
}
