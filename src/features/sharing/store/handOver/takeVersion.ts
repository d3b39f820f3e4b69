import type { Repository } from '#device/storage/repository';
import { withVersionBeside } from '#documents/patient/mergePatients';
import { reviewBeside } from '#documents/patient/otherReview';
import type { OtherVersion } from '#documents/patient/otherVersion';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { RecordingHead } from '#documents/recording/recordingHead';
import { lastSettledAt, versionText, withSettlements } from '#documents/session/sessionVersions';
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

/** A session or plan that is here in another version. */
type Differing = Extract<HandOverEntry, { kind: 'visit' | 'plan' }>;

/**
 * Takes another version of what is here: the one that was signed last counts, or the one here where neither was; the
 * record keeps the other. What was settled counts from both. A plan counts as signed when it was given.
 */
export async function takeVersion(entry: Differing, beside: Beside): Promise<void> {
  await (entry.kind === 'visit' ? takeSession(entry, beside) : takePlan(entry, beside));
}

async function takeSession(
  { session: there }: Extract<Differing, { kind: 'visit' }>,
  beside: Beside,
): Promise<void> {
  const { sessions } = beside.repository;
  const { id } = there;
  const here = (await sessions.find(id))!;
  const hereAt = Math.max(beside.signedHere.get(id) ?? -Infinity, lastSettledAt(here));
  const thereAt = Math.max(beside.signedThere.get(id) ?? -Infinity, lastSettledAt(there));
  const countsThere = thereAt > hereAt;
  const [counts, other] = countsThere ? [there, here] : [here, there];
  if (versionText(other) !== versionText(counts))
    await keepBeside({ kind: 'visit', of: id, text: versionText(other) }, countsThere, beside);
  const whole = withSettlements(counts, other);
  if (whole !== here) await sessions.save(whole);
}

async function takePlan({ plan }: Extract<Differing, { kind: 'plan' }>, beside: Beside): Promise<void> {
  const { replica, plans } = beside.repository;
  const { id, savedAt } = plan;
  const here = (await replica.find('plan', id))!;
  const countsThere = Date.parse(savedAt) > Date.parse(here.savedAt);
  const { text } = countsThere ? here : plan;
  await keepBeside({ kind: 'plan', of: id, text }, countsThere, beside);
  if (countsThere) await plans.save(id, plan.text, savedAt);
}

/**
 * Keeps the corrections and cues of the version of a set that does not count.
 *
 * @param countsThere  whether the version from there counts
 */
export async function keepOtherReview(
  { here, there }: { here: RecordingHead; there: RecordingHead },
  countsThere: boolean,
  beside: Beside,
): Promise<void> {
  const given = countsThere ? reviewBeside(here, there) : reviewBeside(there, here);
  if (given !== null) await keepBeside(given, countsThere, beside);
}

/** Keeps the version that does not count in the patient's record. */
async function keepBeside(
  other: Pick<OtherVersion, 'kind' | 'of' | 'text'>,
  countsThere: boolean,
  { repository, patientId, at, by }: Beside,
): Promise<void> {
  const given = { ...other, at, by: countsThere ? by.here : by.there };
  await repository.patients.update(patientId, (patient) => withVersionBeside(patient, given));
}
