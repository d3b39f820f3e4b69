import { exerciseName } from '#words/exerciseWords';
import type { ListedRecording, ListedSession } from '../rules/listedSession';

/** How long it took: '14 minutes'; null where its end is not known. */
export function sessionLength({ kind, startedAt, endedAt }: ListedSession): string | null {
  if (kind === 'recording') return null;
  if (endedAt === null) return 'not ended';
  const minutes = Math.max(1, Math.round((Date.parse(endedAt) - Date.parse(startedAt)) / 60_000));
  return `${minutes} ${minutes === 1 ? 'minute' : 'minutes'}`;
}

/** A pseudonym, or the words shown where there is none. */
export function patientName(patient: string): string {
  return patient === '' ? 'No patient named' : patient;
}

/** '3 sets'; of a record without any, what it is. */
export function countedSets({ sets, silence }: Pick<ListedSession, 'sets' | 'silence'>): string {
  if (silence !== null) return 'an answer';
  return `${sets.length} ${sets.length === 1 ? 'set' : 'sets'}`;
}

/** The task or hold of a set, as screens show it. */
export function nameOfSet({ line: { task } }: ListedRecording): string {
  return exerciseName(task);
}

/** Side and number: 'right, set 2'. */
export function placeOfSet({ line: { side, number } }: ListedRecording): string {
  return `${side}, set ${number}`;
}

/** What was done of what was asked: '6 of 8 repetitions', '30 s held'; null where nothing is known. */
export function doneInSet({ line, reading }: ListedRecording): string | null {
  const { heldMs, prescribedRepetitions: asked } = line;
  if (heldMs !== null) return `${Math.round(heldMs / 1000)} s held`;
  if (reading.state !== 'read') return asked === null ? null : `${asked} prescribed`;
  const done = reading.result.marks.length;
  const noun = (asked ?? done) === 1 ? 'repetition' : 'repetitions';
  return `${asked === null ? done : `${done} of ${asked}`} ${noun}`;
}

/** The score of a 0 to 10 scale, or that it was not asked or answered. */
export function scoreWords(score: number | null): string {
  return score === null ? 'not given' : String(score);
}
