import type { Repository } from '#device/storage/repository';
import { z } from '#documents/schema/zod';

/** The devices from which sessions of a plan were taken in, their public keys; the first one first. */
const keysSchema = z.array(z.string().max(100)).max(20);

const nameOf = (planId: string) => `sender:${planId}`;

export async function readSenders({ notes }: Repository, planId: string): Promise<string[]> {
  try {
    return keysSchema.parse(JSON.parse((await notes.read()).get(nameOf(planId)) ?? '[]'));
  } catch {
    return []; // Then the next session counts as the first.
  }
}

/** Counts a device among those of a plan. */
export async function pinSender(repository: Repository, planId: string, key: string): Promise<void> {
  const known = await readSenders(repository, planId);
  if (known.includes(key)) return;
  await repository.notes.write(nameOf(planId), JSON.stringify([...known, key].slice(-20)));
}
