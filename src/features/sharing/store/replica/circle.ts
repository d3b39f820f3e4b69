import type { ReplicaRows } from '#device/storage/replicaRows';
import type { People } from '#documents/practice/peopleNote';
import type { SharedHead } from '#documents/practice/sharedHead';
import { z } from '#documents/schema/zod';
import type { KeyPair } from '#shell/seal';
import { shortKey } from './sharedRow';

/** For whom is sealed, and whose documents are read. */
export interface Circle {
  own: KeyPair;
  /** All keys of this device, the one in use first. */
  keys: readonly KeyPair[];
  /** Own initials. */
  by: string;
  /** Public keys of this device and of the colleagues; the own one first. */
  members: readonly string[];
  /** Whom this device took out. */
  takenOut: readonly string[];
  /** Colleagues in the list here whom another one took out, initials: nothing is sealed for them any more. */
  outElsewhere: readonly { initials: string; by: string }[];
  /** Initials of colleagues who took this device's owner out. */
  outOf: readonly string[];
}

const outPrefix = 'out:';
const outSchema = z.strictObject({ at: z.iso.datetime(), keys: z.array(z.string()) });
const mostTakenOut = 100;

/**
 * Who belongs to the practice: the colleagues in the list of this device, without those whom any of them took out of
 * theirs. So somebody who leaves is taken out once, and all devices hear of it.
 */
export async function readCircle(
  rows: ReplicaRows,
  people: People,
  keys: readonly KeyPair[],
): Promise<Circle> {
  const own = keys[0]!;
  const initialsOf = new Map(people.colleagues.map(({ initials, key }) => [key, initials]));
  const outElsewhere = new Map<string, string>();
  const outOf: string[] = [];
  for (const { key, value } of await rows.list(outPrefix)) {
    const sender = key.slice(outPrefix.length);
    const by = initialsOf.get(sender);
    const result = outSchema.safeParse(value);
    if (by === undefined || !result.success) continue;
    for (const out of result.data.keys) {
      if (keys.some(({ recipient }) => recipient === out)) outOf.push(by);
      else if (initialsOf.has(out)) outElsewhere.set(out, by);
    }
  }
  const colleagues = people.colleagues.map(({ key }) => key).filter((key) => !outElsewhere.has(key));
  return {
    own,
    keys,
    by: people.initials,
    members: [own.recipient, ...colleagues],
    takenOut: people.takenOut.map(({ key }) => key).slice(-mostTakenOut),
    outElsewhere: [...outElsewhere].map(([key, by]) => ({ initials: initialsOf.get(key)!, by })),
    outOf,
  };
}

/**
 * Keeps whom a colleague took out.
 *
 * @returns  whether that is news
 */
export async function noteTakenOut(
  rows: ReplicaRows,
  { sender, sealedAt, takenOut }: Pick<SharedHead, 'sender' | 'sealedAt' | 'takenOut'>,
): Promise<boolean> {
  const key = outPrefix + sender;
  const known = outSchema.safeParse(await rows.get(key));
  const before = known.success ? known.data : { at: '', keys: [] };
  const isOlder = before.at !== '' && Date.parse(before.at) >= Date.parse(sealedAt);
  if (isOlder || JSON.stringify(before.keys) === JSON.stringify(takenOut)) return false;
  await rows.put(key, { at: sealedAt, keys: [...takenOut] });
  return true;
}

/** Whether what is sealed for some is sealed for all members. */
export function isForAll({ members }: Circle, sealedFor: readonly string[]): boolean {
  const known = new Set(sealedFor);
  return members.every((key) => known.has(shortKey(key)));
}
