import { mean } from 'd3-array';

/** Errors of one kind in short; numbers are null where there was nothing to compare. */
export interface ErrorFigures {
  count: number;
  /** Mean of the absolute errors. */
  meanAbsolute: number | null;
  /** Mean error: above 0 = read too large. */
  bias: number | null;
  /** Largest absolute error. */
  largest: number | null;
}

/** @param errors  measured less true, any unit */
export function describeErrors(errors: readonly number[]): ErrorFigures {
  const absolute = errors.map(Math.abs);
  return {
    count: errors.length,
    meanAbsolute: mean(absolute) ?? null,
    bias: mean(errors) ?? null,
    largest: absolute.length === 0 ? null : Math.max(...absolute),
  };
}
