import { ratioInterval } from '../statistics/ratioInterval';
import { requireFinite } from '../statistics/requireFinite';

/** What a symmetry in percent makes sense of: amounts with a true 0. An angle has none, and is never in percent. */
export const symmetryUnits = ['repetitions', 'cm', 's', 'N/kg'] as const;
export type SymmetryUnit = (typeof symmetryUnits)[number];

/** An amount, with the standard error of measurement of one such test; null where none is known. */
export interface Amount {
  value: number;
  sem: number | null;
}

export interface Symmetry {
  pct: number;
  /** 95 % confidence interval; null where an error is not known, or so large that any percentage could be true. */
  interval: { lowPct: number; highPct: number } | null;
  /** Where that lies to the line: wholly on one side, or with the line in it. Unknown without an interval. */
  toLine: 'below' | 'beyond' | 'within-error' | 'unknown';
}

/**
 * The line that a symmetry is usually held against, percent. Common practice, no source.
 */
export const usualLinePct = 90;

/**
 * How much the involved leg does of what the other does, in percent.
 *
 * Compared with the other leg before an injury or an operation, it is the estimated pre-injury capacity: the other leg
 * too gets weaker when both rest (Wellsandt 2017, J Orthop Sports Phys Ther
 * 47:334, volume and page from memory).
 *
 * @param involved  0 or above
 * @param uninvolved  above 0, same unit, same conditions
 * @param linePct  what it is held against
 * @throws  RangeError where a value is out of range
 * Source:  Fieller's theorem for the interval (`ratioInterval`)
 */
export function limbSymmetry(involved: Amount, uninvolved: Amount, linePct = usualLinePct): Symmetry {
  requireFinite([involved.value, uninvolved.value, linePct]);
  if (!(involved.value >= 0 && uninvolved.value > 0))
    throw new RangeError(
      `Symmetry needs amounts of 0 or above and above 0, got ${involved.value} and ${uninvolved.value}.`,
    );
  const found =
    involved.sem === null || uninvolved.sem === null
      ? null
      : ratioInterval(involved.value, uninvolved.value, involved.sem, uninvolved.sem);
  const interval = found && { lowPct: Math.max(0, 100 * found.low), highPct: 100 * found.high };
  return { pct: (100 * involved.value) / uninvolved.value, interval, toLine: toLine(interval, linePct) };
}

function toLine(interval: Symmetry['interval'], linePct: number): Symmetry['toLine'] {
  if (interval === null) return 'unknown';
  if (interval.highPct < linePct) return 'below';
  return interval.lowPct >= linePct ? 'beyond' : 'within-error';
}
