import { exerciseIds, taskIds } from '#core/exercises/exercises';
import { planBounds } from '../plan/planRanges';
import { limitsSchema } from '../schema/limitsSchema';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';
import { stagesSchema } from './stages';

/**
 * Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. Version 2 added
 * stages, and what was removed.
 */
export const libraryVersion = 2;

/** In entries and characters; our own choice, no source. As a whole it has to fit into a backup's note. */
export const libraryBounds = { entries: 200, removed: 1000, name: 60, characters: 1_400_000 } as const;

export const libraryKinds = ['exercises', 'texts', 'limits', 'templates', 'stages'] as const;
export type LibraryKind = (typeof libraryKinds)[number];

/** What every entry has: the one that was changed last counts where two libraries become one. */
const changed = {
  at: z.iso.datetime().describe('When it was last changed.'),
  by: z.string().max(longestText.who).describe('Initials; empty where the device knew none.'),
};
const entry = { id: z.uuid(), ...changed };
const name = z.string().min(1).max(libraryBounds.name);
const list = <Entry extends z.ZodType>(one: Entry) => z.array(one).max(libraryBounds.entries);

/** What a practice uses in many plans. It names no patient. */
export const librarySchema = z
  .strictObject({
    format: z.literal('overfoot-library'),
    version: z.literal(libraryVersion),
    exercises: list(
      z.strictObject({
        ...entry,
        name: z.string().min(1).max(planBounds.freeName),
        how: z.string().max(planBounds.freeHow),
        dose: z.string().max(planBounds.freeDose).describe('How much, in words.'),
      }),
    ).describe('Own ones, in words: neither timed nor measured.'),
    texts: list(z.strictObject({ ...entry, name, text: z.string().min(1).max(planBounds.words) })).describe(
      'Words to patients.',
    ),
    limits: list(z.strictObject({ ...entry, task: z.enum(taskIds), limits: limitsSchema })).describe(
      'With which a task begins in a new plan, one entry a task.',
    ),
    templates: list(z.strictObject({ ...entry, name, draft: z.looseObject({}) })).describe(
      'Plans for no one patient.',
    ),
    stages: list(
      z.strictObject({ ...changed, exercise: z.enum(exerciseIds), stages: stagesSchema }),
    ).describe('Own ones in place of the program’s, from easier to harder, one entry an exercise.'),
    removed: z
      .array(
        z.strictObject({
          kind: z.enum(libraryKinds),
          key: z.string().min(1).max(100).describe('Its id; of limits the task, of stages the exercise.'),
          at: z.iso.datetime(),
        }),
      )
      .max(libraryBounds.removed)
      .describe('Entries that were taken out, so that they do not come back with an older library.'),
  })
  .meta({ title: 'Overfoot library of a practice' });

export type LibraryDocument = z.infer<typeof librarySchema>;
export type LibraryEntry<Kind extends LibraryKind = LibraryKind> = LibraryDocument[Kind][number];

export const emptyLibrary: LibraryDocument = {
  format: 'overfoot-library',
  version: libraryVersion,
  exercises: [],
  texts: [],
  limits: [],
  templates: [],
  stages: [],
  removed: [],
};

/** Whether nothing was ever in it. */
export function isEmptyLibrary(library: LibraryDocument): boolean {
  return [...libraryKinds, 'removed' as const].every((kind) => library[kind].length === 0);
}

/** By what an entry is known: limits by their task, stages by their exercise, all else by its id. */
export function keyOf(entry: LibraryEntry): string {
  if ('exercise' in entry) return entry.exercise;
  return 'task' in entry ? entry.task : entry.id;
}
