import { taskIds } from '#core/exercises/exercises';
import { planBounds } from '../plan/planRanges';
import { limitsSchema } from '../schema/limitsSchema';
import { z } from '../schema/zod';
import { longestText } from '../session/sessionDocument';

/** Bumped when a field is added, removed or changes its meaning; older versions are migrated on reading. */
export const libraryVersion = 1;

/** In entries and characters; our own choice, no source. */
export const libraryBounds = { entries: 200, name: 60 } as const;

/** What every entry has: the one that was changed last counts where two libraries become one. */
const entry = {
  id: z.uuid(),
  at: z.iso.datetime().describe('When it was last changed.'),
  by: z.string().max(longestText.who).describe('Initials; empty where the device knew none.'),
};
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
  })
  .meta({ title: 'Overfoot library of a practice' });

export type LibraryDocument = z.infer<typeof librarySchema>;

export const libraryKinds = ['exercises', 'texts', 'limits', 'templates'] as const;
export type LibraryKind = (typeof libraryKinds)[number];
export type LibraryEntry<Kind extends LibraryKind = LibraryKind> = LibraryDocument[Kind][number];

export const emptyLibrary: LibraryDocument = {
  format: 'overfoot-library',
  version: libraryVersion,
  exercises: [],
  texts: [],
  limits: [],
  templates: [],
};
