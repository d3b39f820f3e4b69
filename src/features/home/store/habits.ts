import type { Repository } from '#device/storage/repository';
import { z } from '#documents/schema/zod';

const noteName = 'home-habits';

const habitsSchema = z.strictObject({
  /** The last one that a set was filmed with. */
  camera: z.strictObject({ deviceId: z.string(), facing: z.enum(['front', 'back']).nullable() }).nullable(),
  sound: z.strictObject({ voice: z.boolean(), tones: z.boolean(), outside: z.boolean() }).nullable(),
});

/** What was chosen the last time on this device. */
export type HabitsFound = z.infer<typeof habitsSchema>;

/** What the next session at home need not ask again. Nothing rejects: what can't be kept is asked again. */
export interface Habits {
  find(): Promise<HabitsFound>;
  keep(changed: Partial<HabitsFound>): Promise<void>;
}

const none: HabitsFound = { camera: null, sound: null };

/** @param repository  resolves once it is open */
export function createHabits(repository: Promise<Repository>): Habits {
  let found: Promise<HabitsFound> | null = null;
  const read = async () => {
    try {
      const text = (await (await repository).notes.read()).get(noteName);
      return text === undefined ? none : habitsSchema.parse(JSON.parse(text));
    } catch {
      return none;
    }
  };
  const find = () => (found ??= read());
  return {
    find,
    async keep(changed) {
      const next = find().then((before) => ({ ...before, ...changed }));
      found = next;
      const { notes } = await repository;
      await notes.write(noteName, JSON.stringify(await next)).catch(() => undefined);
    },
  };
}
