import type { OpenedRepository } from '#device/storage/openRepository';
import type { Notes } from '#shell/notes';
import { saveFile } from '#shell/saveFile';
import { draftNames, type PlanWritingWorld } from './createPlanWriting';

/** The browser as plan writing needs it; where storage is blocked, a draft lasts as long as the page. */
export async function browserPlanWriting(
  notes: Notes,
  openRepository: () => Promise<OpenedRepository>,
): Promise<PlanWritingWorld> {
  // What was deleted since the page was opened stays deleted.
  await Promise.all(draftNames.map((name) => notes.readAnew(name).catch(() => null)));
  return {
    read: (name) => notes.read(name),
    // Where the draft can't be stored it stays in the page; saving it as a file still works.
    write: (name, text) => void notes.write(name, text).catch(() => undefined),
    keep: (plan) =>
      void openRepository()
        .then(({ repository }) => repository.plans.save(plan.id, JSON.stringify(plan)))
        .catch(() => undefined), // The plan is handed out anyway; its limits are then not known here.
    watchDeleted: (listener) =>
      void openRepository()
        .then(({ repository }) =>
          repository.subscribe((change) => {
            if (change.kind === 'patient-deleted') listener(change.patient);
          }),
        )
        .catch(() => undefined), // Where nothing can be opened, nothing is deleted.
    saveFile,
    newId: () => crypto.randomUUID(),
    now: () => new Date(),
  };
}
