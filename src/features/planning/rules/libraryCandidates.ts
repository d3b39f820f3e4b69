import { defaultLimits } from '#core/protocol/limits';
import { sameLimits } from '#core/protocol/sameLimits';
import type { LibraryDocument } from '#documents/library/libraryDocument';
import { itemName } from '#documents/plan/itemName';
import type { FreeItem, PlanItem, RepetitionItem } from '#documents/plan/planDocument';
import type { PlanDraft } from '#documents/plan/planDraft';

/** Something of a plan that the library does not have, or has otherwise. */
export type LibraryCandidate =
  | { kind: 'exercises'; name: string; content: FreeItem }
  | { kind: 'limits'; name: string; content: Pick<RepetitionItem, 'task' | 'limits'> };

/** What of a plan can be kept in the library, each once. */
export function libraryCandidates(
  { freeItems, items }: Pick<PlanDraft, 'freeItems' | 'items'>,
  library: LibraryDocument,
): LibraryCandidate[] {
  const exercises = freeItems.filter(
    (item) =>
      item.name.trim() !== '' &&
      library.exercises.every(
        ({ name, how, dose }) => name !== item.name || how !== item.how || dose !== item.dose,
      ),
  );
  const limits = items
    .filter((item) => item.kind === 'repetitions')
    .filter(({ task, limits: own }) => !sameLimits(own, firstLimits(task, library)));
  return [
    ...exercises.map((content) => ({ kind: 'exercises' as const, name: content.name, content })),
    ...limits.map((item) => ({
      kind: 'limits' as const,
      name: itemName(item),
      content: { task: item.task, limits: item.limits },
    })),
  ].filter(
    ({ kind, name }, index, all) => all.findIndex((one) => one.kind === kind && one.name === name) === index,
  );
}

/** A new item with the practice's own first limits, where it has some. */
export function withFirstLimits(item: PlanItem, library: LibraryDocument): PlanItem {
  return item.kind === 'hold' ? item : { ...item, limits: { ...firstLimits(item.task, library) } };
}

function firstLimits(task: RepetitionItem['task'], { limits }: LibraryDocument): RepetitionItem['limits'] {
  return limits.find((one) => one.task === task)?.limits ?? defaultLimits;
}
