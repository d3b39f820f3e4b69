import type { ChangedRecord } from '#device/storage/createDigests';
import type { Repository } from '#device/storage/repository';
import type { IndexedPatients } from './indexedPatients';
import { planOfText } from './planOfText';

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
  changed: readonly ChangedRecord[],
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

  const ofKind = (kind: ChangedRecord['kind']) => changed.filter((one) => one.kind === kind);
  for (const { id } of ofKind('session')) {
    add(await ownerOf(id), id);
    add(earlier.get(id));
  }
  for (const { visitId: sessionId } of await kept.recordings.facts(ofKind('recording').map(({ id }) => id)))
    if (sessionId !== null) add(await ownerOf(sessionId), sessionId);
  for (const { id } of ofKind('plan')) add(planOfText(await kept.plans.find(id).catch(() => null))?.patient);
  if (ofKind('gone').length > 0) {
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
