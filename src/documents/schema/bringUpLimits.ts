import { isFields } from './isFields';

/**
 * Migrates limits of an older version, which held those of the knee angle separately and without a sign.
 * Anything else stays as it is.
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
