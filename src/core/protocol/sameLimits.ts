import { limitEnds } from '../measures/limitEnd';
import { measureIds } from '../measures/measures';
import type { Limits } from './limits';

export function sameLimits(a: Limits, b: Limits): boolean {
  return measureIds.every((id) => limitEnds.every((end) => a[id]?.[end] === b[id]?.[end]));
}
