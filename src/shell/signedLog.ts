import type { OpenedRepository } from '#device/storage/openRepository';
import type { Repository } from '#device/storage/repository';
import type { CheckedLog, LogStanding } from '#documents/patient/checkedLog';
import { latestIds, missingIds, signedText, type LogEntry, type LogKind } from '#documents/patient/logEntry';
import type { PatientDocument } from '#documents/patient/patientDocument';
import { z } from '#documents/schema/zod';
import type { DeviceSigner } from './deviceSigner';
import { logSeenName } from './receivedNotes';
import { isSignedBy } from './signing';

/** What somebody did. */
export interface Did {
  what: LogKind;
  /** Id of what it was done to. */
  about: string;
  /** Initials, where a form asked for them; otherwise those of the device. */
  by?: string;
  /** When that was done which it answers, ISO 8601: where another device's clock is ahead, it is not dated before. */
  after?: string;
}

type Logged = Pick<PatientDocument, 'id' | 'pseudonym' | 'log'>;

/** What the log needs from the world around it; tests hand in plain objects. */
export interface SignedLogWorld {
  openRepository: () => Promise<OpenedRepository>;
  /** Of who works on this device; empty where they were not given. */
  initials(): Promise<string>;
  /** Null where this device can't sign. */
  signer(): Promise<DeviceSigner | null>;
  newId(): string;
  now(): Date;
}

/** Who did what with a patient, signed by this device. */
export interface SignedLog {
  /** A signed entry, to be added to that record in the same change as what was done. */
  entry(patient: Logged, did: Did): Promise<LogEntry>;
  /** Adds one to the record of the patient with this pseudonym; without such a record there is nothing to note it in. */
  add(pseudonym: string, did: Did): Promise<void>;
  /** Checks each entry, and remembers on this device which ones it saw. */
  check(patient: Logged): Promise<CheckedLog>;
}

/** Pages over http can't. */
const canCheck = (globalThis.crypto as Partial<Crypto>).subtle !== undefined;

const seenSchema = z.array(z.uuid()).max(1000);

export function createSignedLog({ openRepository, initials, signer, newId, now }: SignedLogWorld): SignedLog {
  const entry: SignedLog['entry'] = async ({ pseudonym, log }, { what, about, by, after }) =>
    signLogEntry(
      pseudonym,
      {
        id: newId(),
        at: new Date(Math.max(now().getTime(), Date.parse(after ?? '1970-01-01'))).toISOString(),
        by: by ?? (await initials()),
        what,
        about,
        after: latestIds(log),
      },
      await signer(),
    );

  return {
    entry,
    async add(pseudonym, did) {
      const { patients, notes } = (await openRepository()).repository;
      const patient = await patients.named(pseudonym);
      if (patient === null) return;
      const added = await entry(patient, did);
      const kept = await patients.update(patient.id, (one) => ({ ...one, log: [...one.log, added] }));
      if (kept !== null) await remember(notes, kept);
    },
    async check(patient) {
      const { notes } = (await openRepository()).repository;
      const own = (await signer())?.key;
      const entries = await Promise.all(
        patient.log.map(async (entry) => ({
          entry,
          standing: await entryStanding(patient.pseudonym, entry),
          isOwn: entry.key !== '' && entry.key === own,
        })),
      );
      return { entries, missing: (await remember(notes, patient)).length };
    },
  };
}

/** @param signer  null where this device can't sign: the entry says so */
export async function signLogEntry(
  pseudonym: string,
  facts: Omit<LogEntry, 'key' | 'signature'>,
  signer: DeviceSigner | null,
): Promise<LogEntry> {
  if (signer === null) return { ...facts, key: '', signature: '' };
  const { signature } = await signer.sign(bytesOf(signedText(pseudonym, { ...facts, key: signer.key })));
  return { ...facts, key: signer.key, signature };
}

/** @param pseudonym  of the patient in whose record it is */
export async function entryStanding(pseudonym: string, entry: LogEntry): Promise<LogStanding> {
  if (entry.key === '' && entry.signature === '') return 'unsigned';
  if (!canCheck) return 'unchecked';
  const fits = await isSignedBy(entry.key, entry.signature, bytesOf(signedText(pseudonym, entry)));
  return fits ? 'fits' : 'wrong';
}

function bytesOf(text: string): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(text);
}

/**
 * Keeps the latest ids beside the record: what they follow is named in the entries themselves.
 *
 * @returns  the ids that are missing, which stay remembered
 */
async function remember(notes: Repository['notes'], { id, log }: Logged): Promise<string[]> {
  const before = (await notes.read()).get(logSeenName(id)) ?? '[]';
  const missing = missingIds(log, seenIn(before));
  const text = JSON.stringify([...missing, ...latestIds(log)]);
  if (text !== before) await notes.write(logSeenName(id), text);
  return missing;
}

function seenIn(text: string): string[] {
  try {
    return seenSchema.parse(JSON.parse(text));
  } catch {
    return [];
  }
}
