import { demoNote } from '#documents/demo/demoNote';
import type { PatientDocument, SessionMark } from '#documents/patient/patientDocument';
import { plainName } from '#documents/schema/plainName';
import { dateInWords } from '#words/dateWords';
import { gravities, type PatientOverview, type SessionOverview } from './overview';
import { planAdherence, type Following } from './planAdherence';
import { visitSigns } from './visitSigns';

/** How far somebody got with a session. */
export type SessionState = 'new' | SessionMark['state'];

/** One line of the list of patients. */
export interface PatientRow {
  id: string;
  pseudonym: string;
  /** Start of the latest session; null without one. */
  lastAt: string | null;
  sessions: number;
  counts: Record<SessionState, number>;
  /** What needs a look in sessions that are not settled, each once, the most pressing first. */
  needs: string[];
  rank: number;
  /** Whether the patient is one of the demo clinic's. */
  isDemo: boolean;
  /**
   * Whole days since the earliest session in which something needs a look and which nobody opened; null where there is
   * none.
   */
  unseenDays: number | null;
}

const mostNeeds = 3;

/** From how many days on a colleague who covers is shown it. Our own choice, no source. */
export const coverAfterDays = 3;
const dayMs = 86_400_000;

/**
 * All patients, those that need a look first: something said of the body that is still open; then new sessions, the more
 * pressing the earlier; then what was looked at and not settled; then the latest session first.
 *
 * @param overviews  by the patient's id; without one, the patient has no sessions
 * @param nowMs  since 1970; who is silent depends on the day
 */
export function listPatients(
  patients: readonly PatientDocument[],
  overviews: ReadonlyMap<string, PatientOverview>,
  nowMs: number,
): PatientRow[] {
  const rows = patients.map((patient) => {
    const { sessions = [], following = null } = overviews.get(patient.id) ?? {};
    const row = withSigns(rowOf(patient, sessions, nowMs), patient.redFlags);
    return withSilence(row, following, patient.pauses, nowMs);
  });
  return rows.sort(
    (a, b) =>
      b.rank - a.rank ||
      timeOf(b.lastAt) - timeOf(a.lastAt) ||
      (a.pseudonym < b.pseudonym ? -1 : Number(a.pseudonym > b.pseudonym)),
  );
}

/**
 * How far somebody got with a session; what was opened again counts as viewed.
 *
 * @param marks  of the sessions that were looked at
 */
export function stateOf(
  marks: readonly SessionMark[],
  session: { id: string; isOpen: boolean },
): SessionState {
  return stateBy(
    marks.find(({ visitId }) => visitId === session.id),
    session,
  );
}

function stateBy(mark: SessionMark | undefined, { isOpen }: { isOpen: boolean }): SessionState {
  const state = mark?.state ?? 'new';
  return isOpen && state === 'settled' ? 'viewed' : state;
}

/** Those whose pseudonym has all of the words, whatever their capitals; all for an empty search. */
export function searchPatients(rows: readonly PatientRow[], search: string): readonly PatientRow[] {
  const words = plainName(search).toLowerCase().split(' ');
  return rows.filter(({ pseudonym }) => words.every((word) => pseudonym.toLowerCase().includes(word)));
}

/** Those who need a look and were not looked at for days, the longest first: for a colleague who covers. */
export function coverRows(rows: readonly PatientRow[]): PatientRow[] {
  const daysOf = ({ unseenDays }: PatientRow) => unseenDays ?? -1;
  return rows.filter((row) => daysOf(row) >= coverAfterDays).sort((a, b) => daysOf(b) - daysOf(a));
}

function rowOf(
  { id, pseudonym, marks, note }: PatientDocument,
  sessions: readonly SessionOverview[],
  nowMs: number,
): PatientRow {
  const markOf = new Map(marks.map((mark) => [mark.visitId, mark]));
  const stated = sessions.map((session) => ({ ...session, state: stateBy(markOf.get(session.id), session) }));
  const counts = { new: 0, viewed: 0, settled: 0 };
  for (const { state } of stated) counts[state]++;
  const unsettled = stated.filter(({ state }) => state !== 'settled');
  const unseen = stated
    .filter(({ state, needs, isOpen }) => state === 'new' && (isOpen || needs.length > 0))
    .map(({ startedAt }) => Date.parse(startedAt));
  const byGravity = [...unsettled].sort(
    (a, b) => Number(b.isOpen) - Number(a.isOpen) || b.gravity - a.gravity,
  );
  return {
    id,
    pseudonym,
    lastAt: sessions[0]?.startedAt ?? null,
    sessions: sessions.length,
    counts,
    needs: [...new Set(byGravity.flatMap(({ needs }) => needs))].slice(0, mostNeeds),
    rank: Math.max(0, ...unsettled.map(rankOf)),
    isDemo: note === demoNote,
    unseenDays: unseen.length === 0 ? null : Math.max(0, Math.floor((nowMs - Math.min(...unseen)) / dayMs)),
  };
}

/**
 * Signs that a therapist wrote down at a visit are listed, and rank as what was viewed and is not settled: the person who
 * wrote them down knows of them.
 */
function withSigns(row: PatientRow, visits: PatientDocument['redFlags']): PatientRow {
  const found = visitSigns(visits);
  if (found === null) return row;
  const signs = found.count === 1 ? 'a sign' : `${found.count} signs`;
  return {
    ...row,
    needs: [`${signs} at the visit of ${dateInWords(found.on)}`, ...row.needs].slice(0, mostNeeds),
    rank: Math.max(row.rank, gravities.body),
  };
}

/** Silence is said first of what is not about the body, and counts as much as a new session in which something moved. */
function withSilence(
  row: PatientRow,
  following: Following | null,
  pauses: PatientDocument['pauses'],
  nowMs: number,
): PatientRow {
  const found = following && planAdherence(following, pauses, nowMs);
  if (!found?.isSilent) return row;
  return {
    ...row,
    needs: [`silent for ${found.silentDays} days`, ...row.needs].slice(0, mostNeeds),
    rank: Math.max(row.rank, gravities.body + 1 + gravities.movement),
  };
}

/** Open concerns, then what is new by its gravity, then what was viewed by its gravity. */
function rankOf({ isOpen, state, gravity }: SessionOverview & { state: SessionState }): number {
  const levels = gravities.body + 1;
  if (isOpen) return 3 * levels;
  return state === 'new' ? levels + gravity : Math.min(gravity, levels - 1);
}

function timeOf(at: string | null): number {
  return at === null ? 0 : Date.parse(at);
}
