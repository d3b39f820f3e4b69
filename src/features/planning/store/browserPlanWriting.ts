import type { OpenedRepository } from '#device/storage/openRepository';
import type { Notes } from '#shell/notes';
import { saveFile } from '#shell/saveFile';
import type { PlanWritingWorld } from './createPlanWriting';

/** The browser as plan writing needs it; where storage is blocked, a draft lasts as long as the page. */
export function browserPlanWriting(
  notes: Notes,
  openRepository: () => Promise<OpenedRepository>,
): PlanWritingWorld {
  return {
    read: (name) => notes.read(name),
    // Where the draft can't be stored it stays in the page; saving it as a file still works.
    write: (name, text) => void notes.write(name, text).catch(() => undefined),
    keep: (plan) =>
      void openRepository()
        .then(({ repository }) => repository.plans.save(plan.id, JSON.stringify(plan)))
        .catch(() => undefined), // The plan is handed out anyway; its limits are then not known here.
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
