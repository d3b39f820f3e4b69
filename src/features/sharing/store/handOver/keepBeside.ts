import type { PlanRecord } from '#device/storage/keptSchemas';
import type { Repository } from '#device/storage/repository';
import { withOtherVersion } from '#documents/patient/otherVersion';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { SessionDocument } from '#documents/session/sessionDocument';
import { entryStanding } from '#shell/signedLog';
import type { HandOverEntry } from './openHandOver';

/** When something was signed last, ms since 1970, by its id. */
type LastSigned = ReadonlyMap<string, number>;

/** In which record the version that does not count is kept, and by what it is decided. */
export interface Beside {
  repository: Repository;
  patientId: string;
  /** When the record is taken, ISO 8601. */
  at: string;
  /** Initials: who keeps the record here, and who handed it over. */
  by: { here: string; there: string };
  signedHere: LastSigned;
  signedThere: LastSigned;
}

/** Of the entries of a record that are as they were signed. */
export async function lastSigned(patient: PatientDocument | null): Promise<LastSigned> {
  const signed = new Map<string, number>();
  for (const entry of patient?.log ?? []) {
    if ((await entryStanding(patient!.pseudonym, entry)) !== 'fits') continue;
    signed.set(entry.about, Math.max(signed.get(entry.about) ?? -Infinity, Date.parse(entry.at)));
  }
  return signed;
}

/** Both versions, and when each was signed last; -Infinity where that never was. */
interface Versions {
  of: string;
  here: string;
  there: string;
  hereAt: number;
  thereAt: number;
}

/**
 * Keeps the version that does not count in the patient's record: the one that was signed earlier, or the one from there
 * where neither was signed. A plan counts as signed when it was given.
 *
 * @returns  whether the version from there counts
 */
export async function keepBeside(
  entry: Extract<HandOverEntry, { kind: 'visit' | 'plan' }>,
  beside: Beside,
): Promise<boolean> {
  const { repository, patientId, at, by } = beside;
  const { of, here, there, hereAt, thereAt } =
    entry.kind === 'visit' ? await ofSession(entry.session, beside) : await ofPlan(entry.plan, beside);
  const countsThere = thereAt > hereAt;
  const [whose, text] = countsThere ? [by.here, here] : [by.there, there];
  await repository.patients.update(patientId, (patient) => {
    const given = { kind: entry.kind, of, at, by: whose, text };
    const otherVersions = withOtherVersion(patient.otherVersions, given);
    return otherVersions === patient.otherVersions ? patient : { ...patient, otherVersions };
  });
  return countsThere;
}

async function ofSession(
  session: SessionDocument,
  { repository, signedHere, signedThere }: Beside,
): Promise<Versions> {
  const { id } = session;
  const kept = (await repository.sessions.find(id))!;
  return {
    of: id,
    here: JSON.stringify(kept),
    there: JSON.stringify(session),
    hereAt: latest(signedHere.get(id), ...settledAt(kept)),
    thereAt: latest(signedThere.get(id), ...settledAt(session)),
  };
}

async function ofPlan({ id, text, savedAt }: PlanRecord, { repository }: Beside): Promise<Versions> {
  const kept = (await repository.plans.list()).found.find((plan) => plan.id === id)!;
  return {
    of: id,
    here: kept.text,
    there: text,
    hereAt: Date.parse(kept.savedAt),
    thereAt: Date.parse(savedAt),
  };
}

/** When therapists signed in it that something is settled. */
function settledAt({ settles }: SessionDocument): number[] {
  return settles.filter(({ by }) => by === 'therapist').map(({ at }) => Date.parse(at));
}

function latest(...times: (number | undefined)[]): number {
  return Math.max(-Infinity, ...times.filter((time) => time !== undefined));
}
