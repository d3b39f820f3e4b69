import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';

/** The plan of a text that is kept; null where it can't be read. */
export function planOfText(text: string | null): PlanDocument | null {
  try {
    return parsePlan(text ?? '');
  } catch {
    return null;
  }
}
