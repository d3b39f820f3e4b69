import { Problem } from '#core/problem';
import type { Repository } from '#device/storage/repository';
import type { BackupFile } from '#documents/backup/backupManifest';
import { handOverBounds, handOverVersion, type HandOverManifest } from '#documents/backup/handOverManifest';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { packPart } from '../packedPart';
import type { ParcelSigner } from '../parcel';

/** What of a patient is handed over, for display. */
export interface HandedOver {
  sessions: number;
  recordings: number;
  plans: number;
}

/**
 * A patient's record with plans, sessions and recordings as one file: a line of JSON that says what follows, a line that
 * signs the first one, then the parts. No videos.
 *
 * @returns  not sealed yet
 * @throws Problem  where something of it can't be read, or there is too much
 */
export async function packHandOver(
  repository: Repository,
  patient: PatientDocument,
  { createdAt, by }: { createdAt: string; by: string },
  signer: NonNullable<ParcelSigner>,
): Promise<{ blob: Blob; contents: HandedOver }> {
  const { sessions, recordings, plans } = repository;
  const files: BackupFile[] = [];
  const parts: BlobPart[] = [];
  const contents: HandedOver = { sessions: 0, recordings: 0, plans: 0 };
  let bytes = 0;
  const add = (document: unknown, fileOf: (facts: ReturnType<typeof packPart>['facts']) => BackupFile) => {
    const { part, facts } = packPart(document);
    bytes += facts.bytes;
    if (bytes > handOverBounds.bytes || files.length >= handOverBounds.files)
      throw new Problem(
        'file',
        'There is more of this patient than one file may hold. Use a backup of everything instead.',
      );
    files.push(fileOf(facts));
    parts.push(new Blob([part]));
  };
  add(patient, (facts) => ({ kind: 'patient', ...facts }));
  const theirs = (await sessions.list()).found.filter((session) => session.patient === patient.pseudonym);
  for (const session of theirs) {
    add(session, (facts) => ({ kind: 'visit', ...facts }));
    contents.sessions++;
  }
  for (const plan of (await plans.list()).found.filter(({ text }) => patientOf(text) === patient.pseudonym)) {
    add(plan, (facts) => ({ kind: 'plan', ...facts }));
    contents.plans++;
  }
  const ids = new Set(theirs.map(({ id }) => id));
  for (const { id, visitId } of (await recordings.list()).found) {
    if (visitId === null || !ids.has(visitId)) continue;
    const kept = await recordings.find(id);
    if (kept === null) continue;
    add(kept.recording, (facts) => ({
      kind: 'session',
      sessionId: id,
      visitId,
      fromVideo: 'impossible',
      ...facts,
    }));
    contents.recordings++;
  }
  const manifest: HandOverManifest = {
    format: 'overfoot-hand-over',
    version: handOverVersion,
    createdAt,
    by,
    files,
  };
  const line = new TextEncoder().encode(JSON.stringify(manifest));
  return { blob: new Blob([line, `\n${JSON.stringify(await signer(line))}\n`, ...parts]), contents };
}

/** Whom a plan is for; null where that can't be read. */
export function patientOf(planText: string): string | null {
  try {
    const { patient } = JSON.parse(planText) as { patient?: unknown };
    return typeof patient === 'string' ? patient : null;
  } catch {
    return null;
  }
}
