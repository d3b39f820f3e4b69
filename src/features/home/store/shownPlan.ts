import type { Repository } from '#device/storage/repository';
import { parsePlan } from '#documents/plan/parsePlan';
import type { PlanDocument } from '#documents/plan/planDocument';

const noteName = 'shown-plan';

/** A plan that is shown and not accepted yet, kept so that a reload or a closed tab does not lose it. */
export interface ShownPlan {
  /** Never rejects: what can't be kept is opened from its link or file again. */
  keep(plan: PlanDocument): Promise<void>;
  forget(): Promise<void>;
  /** Null where none is kept, or none that can be read. */
  find(): Promise<PlanDocument | null>;
}

/** @param repository  resolves once it is open */
export function createShownPlan(repository: Promise<Repository>): ShownPlan {
  const notes = async () => (await repository).notes;
  return {
    keep: async (plan) => (await notes()).write(noteName, JSON.stringify(plan)).catch(() => undefined),
    forget: async () => (await notes()).remove(noteName).catch(() => undefined),
    async find() {
      try {
        const text = (await (await notes()).read()).get(noteName);
        return text === undefined ? null : parsePlan(text);
      } catch {
        return null;
      }
    },
  };
}
