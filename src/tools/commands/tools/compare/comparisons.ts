import { changeKinds } from './changeKinds';
import type { ComparisonKind } from './comparisonKind';
import { recordKinds } from './recordKinds';
import { reliabilityKinds } from './reliabilityKinds';

/** All that `compare` can do, by the `kind` in the file. */
export const comparisons: Record<string, ComparisonKind> = {
  ...changeKinds,
  ...reliabilityKinds,
  ...recordKinds,
};
