import { ascending, greatest } from 'd3-array';
import { clinicianFlagIds } from '#core/safety/clinicianFlagIds';
import type { RedFlagsRecord } from '#documents/patient/caseEntries';

/** Warning signs that applied when they were last asked about at a visit. */
export interface VisitSigns {
  count: number;
  /** Day of the latest visit at which one of them applied, ISO 8601. */
  on: string;
}

/**
 * The signs that still stand: of each the last visit counts at which it was asked about.
 *
 * Missing: null where none does, or nothing was asked; a sign that a visit did not ask about stays as it was
 */
export function visitSigns(visits: readonly RedFlagsRecord[]): VisitSigns | null {
  const kept = visits.filter(({ withdrawn }) => withdrawn === null);
  const standing = clinicianFlagIds.flatMap((id) => {
    const last = greatest(
      kept.filter(({ asked }) => asked.includes(id)),
      (a, b) => ascending(a.on, b.on) || ascending(a.at, b.at),
    );
    return last?.applied.includes(id) === true ? [last.on] : [];
  });
  const on = standing.toSorted().at(-1);
  return on === undefined ? null : { count: standing.length, on };
}
