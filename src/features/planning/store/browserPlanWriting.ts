import type { OpenedRepository } from '#device/storage/openRepository';
import type { Notes } from '#shell/notes';
import { saveFile } from '#shell/saveFile';
import type { PlanWritingWorld } from './createPlanWriting';

/** The browser as plan writing needs it; where it keeps nothing, a draft lasts as long as the page. */
export function browserPlanWriting(
  notes: Notes,
  openRepository: () => Promise<OpenedRepository>,
): PlanWritingWorld {
  return {
    read: (name) => notes.read(name),
    // The draft stays in the page where it can't be kept; saving it as a file works all the same.
    write: (name, text) => void notes.write(name, text).catch(() => undefined),
    keep: (plan) =>
      void openRepository()
        .then(({ repository }) => repository.plans.save(plan.id, JSON.stringify(plan)))
        .catch(() => undefined), // It goes out all the same; its limits are not known here then.
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
