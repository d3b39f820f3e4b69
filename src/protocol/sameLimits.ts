import type { Limits } from './limits';

export function sameLimits(a: Limits, b: Limits): boolean {
  return a.kneeInwardDeg === b.kneeInwardDeg && a.kneeOutwardDeg === b.kneeOutwardDeg;
}
