import { limitEnds, type Limits } from './limits';
import { measureIds } from '../measures/measures';

export function sameLimits(a: Limits, b: Limits): boolean {
  return (
    a.kneeInwardDeg === b.kneeInwardDeg &&
    a.kneeOutwardDeg === b.kneeOutwardDeg &&
    measureIds.every((id) => limitEnds.every((end) => a.others?.[id]?.[end] === b.others?.[id]?.[end]))
  );
}
