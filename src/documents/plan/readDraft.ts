import { isFields } from '../schema/isFields';
import { withProgress } from './itemProgress';
import { finishDraft, newDraft, type PlanDraft } from './planDraft';
import { withKeyList } from './withKeyList';

/** A draft that was kept, of this version or an earlier one; null where the form can't show it. */
export function readDraft(data: unknown): PlanDraft | null {
  if (typeof data !== 'object' || data === null) return null;
  const kept = withKeyList(data) as Partial<PlanDraft>;
  if (kept.items !== undefined && !(Array.isArray(kept.items) && kept.items.every(isFields))) return null;
  const draft: PlanDraft = { ...newDraft(), ...kept, items: (kept.items ?? []).map(withProgress) };
  // Half a plan can't be checked by the plan's schema; what the form can't show is dropped.
  const sided = draft.items.map((item) =>
    Array.isArray(item.sides) && item.sides.length === 0 ? { ...item, sides: ['right' as const] } : item,
  );
  const complete = { ...draft, items: sided, patient: 'x', beyondPainLimit: 'x' };
  const shown = finishDraft(complete, anyId, anyTime);
  return shown.kind === 'damaged' ? null : draft;
}

const anyId = '00000000-0000-4000-8000-000000000000';
/** Before any review date. */
const anyTime = '2000-01-01T00:00:00.000Z';
