import type { CheckedLog } from '#documents/patient/checkedLog';
import type { LogEntry } from '#documents/patient/logEntry';
import type { PatientDocument } from '#documents/patient/patientDocument';
import type { ListedSession } from '#features/sessions/rules/listedSession';
import { dayWords } from '#words/dateWords';
import { exerciseName } from '#words/exerciseWords';
import { noteNameWords } from './alsoNoted';
import { proposalWords } from './programmeWords';

type Recorded = Pick<PatientDocument, 'decisions' | 'handOvers'>;

/** What was done, after the initials: 'changed the limits of sit to stand, left leg, Sun 5 Apr 2026'. */
export function logSentence(
  { what, about }: LogEntry,
  { decisions, handOvers }: Recorded,
  sessions: readonly ListedSession[],
): string {
  switch (what) {
    case 'decision': {
      const decision = decisions.find(({ id }) => id === about);
      if (decision === undefined) return 'decided on a proposal';
      return `${decision.answer} “${proposalWords[decision.proposal]}” for ${exerciseName(decision.task).toLowerCase()}`;
    }
    case 'limits':
      return `changed the limits of ${setWords(about, sessions)}`;
    case 'corrections':
      return `corrected by hand ${setWords(about, sessions)}`;
    case 'review':
      return `marked as reviewed ${setWords(about, sessions)}`;
    case 'review-withdrawn':
      return sessions.some(({ id }) => id === about)
        ? `opened again what was settled in ${sessionWords(about, sessions)}`
        : `took back the mark “reviewed” of ${setWords(about, sessions)}`;
    case 'concern-settled':
      return `settled what was said of the body in ${sessionWords(about, sessions)}`;
    case 'session-settled':
      return `said that nothing is left to do in ${sessionWords(about, sessions)}`;
    case 'given':
      return `handed the record over to ${colleagueOf(about, handOvers)}`;
    case 'taken':
      return handOvers.some(({ id }) => id === about)
        ? `took the record over from ${colleagueOf(about, handOvers)}`
        : 'said that a colleague’s record under this pseudonym is of the same person';
    case 'note-put-away':
      return `put away what ${noteNameWords(about)}`;
    case 'note-put-back':
      return `showed again what ${noteNameWords(about)}`;
  }
}

/** What is known of an entry's signature. */
export function standingWords({ standing, isOwn }: CheckedLog['entries'][number]): string {
  switch (standing) {
    case 'fits':
      return isOwn ? 'signed on this device' : 'signed on another device';
    case 'wrong':
      return 'the signature does not fit: it was changed, or written by somebody else';
    case 'unsigned':
      return 'not signed: that device could not';
    case 'unchecked':
      return 'not checked: this browser can’t check signatures here';
  }
}

function setWords(recordingId: string, sessions: readonly ListedSession[]): string {
  for (const { sets, startedAt } of sessions)
    for (const { line } of sets)
      if (line.sessionId === recordingId)
        return `${exerciseName(line.task).toLowerCase()}, ${line.side} leg, ${dayWords(startedAt)}`;
  return 'a set that is no longer kept here';
}

function sessionWords(id: string, sessions: readonly ListedSession[]): string {
  const session = sessions.find((one) => one.id === id);
  return session === undefined
    ? 'a session that is no longer kept here'
    : `the session of ${dayWords(session.startedAt)}`;
}

function colleagueOf(id: string, handOvers: PatientDocument['handOvers']): string {
  return handOvers.find((one) => one.id === id)?.colleague ?? 'a colleague';
}
