import { defaultLimits } from '#core/protocol/limits';
import { sides } from '#core/protocol/side';
import { browserShelves } from '#device/storage/browserShelves';
import { withMarks } from '#device/storage/createDigests';
import { savingSession } from '#device/storage/createSets';
import { openRepository } from '#device/storage/openRepository';
import { savingRecording } from '#device/storage/recordingChanges';
import type { RecordChange } from '#device/storage/records';
import { newPatient } from '#documents/patient/newPatient';
import type { RecordingDocument } from '#documents/recording/recordingDocument';
import { notAsked } from '#documents/session/notAsked';
import { sessionVersion, type SessionDocument } from '#documents/session/sessionDocument';
import { seededPseudonym } from './seededPseudonym';

/** How large a clinic is put into storage. */
export interface SeededClinic {
  patients: number;
  /** Of each patient. */
  sessions: number;
  /** Of each session; they change sides. */
  sets: number;
  /** Of the first patient's sessions, whose course is opened. */
  firstSets: number;
  /** A short one, whose peaks are changed. */
  recording: RecordingDocument;
}

const dayMs = 24 * 3_600_000;
const firstDayMs = Date.parse('2026-01-05T08:00:00.000Z');
/** Records that are written in one transaction. */
const together = 400;

/** Invented patients straight into storage, as if they had been kept over the weeks. */
export async function seedClinic({
  patients,
  sessions,
  sets,
  firstSets,
  recording,
}: SeededClinic): Promise<void> {
  const { repository } = await openRepository(); // It makes the shelf.
  repository.close();
  const shelves = browserShelves();
  const records = withMarks(await shelves.openRecords((await shelves.list()).at(-1)!));
  let changes: RecordChange[] = [];
  const add = async (more: readonly RecordChange[], isLast = false) => {
    changes.push(...more);
    if (changes.length < together && !isLast) return;
    await records.apply(changes);
    changes = [];
  };
  for (let patient = 0; patient < patients; patient++) {
    const pseudonym = seededPseudonym(patient);
    const openedAt = new Date(firstDayMs).toISOString();
    const document = newPatient(pseudonym, crypto.randomUUID(), openedAt);
    await add([
      { put: 'patients', key: document.id, value: { ...document, note: 'Invented, for a benchmark.' } },
    ]);
    for (let session = 0; session < sessions; session++) {
      const startedAt = new Date(firstDayMs + (2 * session + (patient % 2)) * dayMs).toISOString();
      const count = patient === 0 ? firstSets : sets;
      await add(sessionChanges(pseudonym, startedAt, session, count, recording));
    }
  }
  await add([], true);
  records.close();
}

function sessionChanges(
  patient: string,
  startedAt: string,
  session: number,
  sets: number,
  recording: RecordingDocument,
): RecordChange[] {
  const id = crypto.randomUUID();
  const recordings = Array.from({ length: sets }, (_, set) => ({
    ...withPeaks(recording, session, set),
    id: crypto.randomUUID(),
    createdAt: startedAt,
    setup: { ...recording.setup, side: sides[(session + set) % 2]! },
  }));
  const document: SessionDocument = {
    format: 'overfoot-visit',
    version: sessionVersion,
    ...notAsked,
    id,
    startedAt,
    endedAt: null,
    patient,
    planId: null,
    painLimit: 3,
    painBefore: session % 3,
    painAfter: (session + 1) % 5,
    effort: 4 + (session % 4),
    remark: '',
    sets: recordings.map((one, set) => ({
      sessionId: one.id,
      item: 0,
      task: one.setup.task,
      side: one.setup.side,
      number: Math.floor(set / 2) + 1,
      prescribedRepetitions: one.derived.repetitions.length,
      painDuring: session % 4,
      cutShort: null,
      heldMs: null,
      conditions: null,
    })),
  };
  return [
    ...savingSession(document),
    ...recordings.flatMap((one) =>
      savingRecording(one, { visitId: id, video: null, fromVideo: 'impossible' }),
    ),
  ];
}

/** The knee goes less far in from session to session, and scatters; its verdicts go along. */
function withPeaks(recording: RecordingDocument, session: number, set: number): RecordingDocument {
  const { most } = defaultLimits['knee-angle'];
  const repetitions = recording.derived.repetitions.map((repetition) => {
    const { max } = repetition.ranges['knee-angle'];
    const value = 14 - session / 3 + ((repetition.number * 7 + set * 5 + session * 3) % 11) - 5;
    const verdict = value > most ? ('probably-out' as const) : ('probably-in' as const);
    const { judgement } = repetition;
    return {
      ...repetition,
      ranges: {
        ...repetition.ranges,
        'knee-angle': { ...repetition.ranges['knee-angle'], max: { ...max!, value } },
      },
      judgement: {
        ...judgement,
        verdict,
        reason: null,
        decidedBy: 'knee-angle' as const,
        chanceInLine: value > most ? 0.15 : 0.85,
        measures: judgement.measures.map((one) =>
          one.measure === 'knee-angle'
            ? {
                ...one,
                verdict,
                reason: null,
                chanceInLine: value > most ? 0.15 : 0.85,
                extreme: { ...max!, value },
              }
            : one,
        ),
      },
    };
  });
  return { ...recording, note: 'Invented, for a benchmark.', derived: { ...recording.derived, repetitions } };
}
