import { withProgress } from '#documents/plan/itemProgress';
import { finishDraft, newDraft, type PlanDraft } from '#documents/plan/planDraft';
import { withKeyList } from '#documents/plan/withKeyList';
import { isFields } from '#documents/schema/isFields';

/** A plan for no one patient, by its name. */
export interface Template {
  name: string;
  draft: PlanDraft;
}

/** What the paper says of the practice; kept on this device alone. */
export interface Practice {
  name: string;
  telephone: string;
}

/** Longest entries, characters; the forms enforce the same. */
export const longestPractice = 100;
export const longestTemplateName = 60;

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

/** The kept templates; those that can't be read are left out. */
export function readTemplates(text: string | null): Template[] {
  const data = readJson(text);
  if (!Array.isArray(data)) return [];
  return data.flatMap((one: unknown) => {
    const { name, draft } = (one ?? {}) as { name?: unknown; draft?: unknown };
    const read = typeof name === 'string' && name !== '' ? readDraft(draft) : null;
    return read === null ? [] : [{ name: (name as string).slice(0, longestTemplateName), draft: read }];
  });
}

/** What was said of the practice; null where it was not asked yet. */
export function readPractice(text: string | null): Practice | null {
  const { name, telephone } = (readJson(text) ?? {}) as { name?: unknown; telephone?: unknown };
  if (typeof name !== 'string' || typeof telephone !== 'string') return null;
  return { name: name.slice(0, longestPractice), telephone: telephone.slice(0, longestPractice) };
}

export function readJson(text: string | null): unknown {
  try {
    return JSON.parse(text ?? 'null');
  } catch {
    return null;
  }
}
