import type { Repository } from '#device/storage/repository';
import type { IndexedPatients } from './indexedPatients';
import type { Changes } from './readChanges';

/** The sessions that may be a patient's, by pseudonym: of patients whose digest is out of date. */
export type Outdated = ReadonlyMap<string, ReadonlySet<string>>;

type OwnerOf = (sessionId: string) => Promise<string | null>;

/**
 * Finds whose digests are out of date.
 *
 * @param madeAs  to look at everything, and find also what was made otherwise; null to look at what changed alone
 */
export async function findOutdated(
  kept: Repository,
  { patients, overviews }: IndexedPatients,
  { ids, recordingsOf, plansOf }: Changes,
  madeAs: string | null,
): Promise<Outdated> {
  const listed = madeAs === null ? null : (await kept.sessions.list()).found;
  const pseudonyms = new Map(patients.map(({ id, pseudonym }) => [id, pseudonym]));
  /** By session, as it was worked out last. */
  const earlier = new Map<string, string>();
  const known = new Map<string, Set<string>>();
  for (const [id, { sessions }] of overviews) {
    const pseudonym = pseudonyms.get(id);
    if (pseudonym === undefined) continue;
    known.set(pseudonym, new Set(sessions.map((session) => session.id)));
    for (const session of sessions) earlier.set(session.id, pseudonym);
  }
  const current = listed === null ? null : new Map(listed.map(({ id, patient }) => [id, patient]));
  const ownerOf: OwnerOf = async (id) => {
    if (current !== null) return current.get(id) ?? null;
    return (await kept.sessions.find(id).catch(() => null))?.patient ?? null;
  };

  const outdated = new Map<string, Set<string>>();
  const add = (pseudonym: string | null | undefined, sessionId?: string) => {
    if (pseudonym === null || pseudonym === undefined || pseudonym === '') return;
    const sessions = outdated.get(pseudonym) ?? new Set(known.get(pseudonym));
    if (sessionId !== undefined) sessions.add(sessionId);
    outdated.set(pseudonym, sessions);
  };

  // All at once, since after a backup was brought in there are thousands.
  const changed = [...new Set([...ids.session, ...recordingsOf.keys()])];
  const owners = await Promise.all(changed.map(ownerOf));
  changed.forEach((id, at) => add(owners[at], id));
  for (const id of ids.session) add(earlier.get(id));
  for (const pseudonym of plansOf.keys()) add(pseudonym);
  if (ids.gone.length > 0) {
    const left = new Set(await kept.sessions.ids());
    for (const [id, pseudonym] of earlier) if (!left.has(id)) add(pseudonym);
  }
  for (const { id, patient } of listed ?? []) {
    const of = patients.find(({ pseudonym }) => pseudonym === patient);
    const isCurrent = of !== undefined && overviews.get(of.id)?.madeAs === madeAs;
    if (!isCurrent || outdated.has(patient)) add(patient, id);
  }
  return outdated;
}
