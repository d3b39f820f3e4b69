import { countSet } from '#core/scoring/countSet';
import { findSetPeak } from '#core/scoring/findSetPeak';
import { judgementOf } from '#core/scoring/judge';
import { doseWords } from '../plan/itemFacts';
import type { PlanDocument } from '../plan/planDocument';
import { completeRepetitions } from '../recording/completeRepetitions';
import type { RecordingDocument } from '../recording/recordingDocument';
import type { SessionDocument } from '../session/sessionDocument';
import type {
  ExchangePlan,
  ExchangeRecord,
  ExchangeResult,
  ExchangeSession,
  SessionState,
} from './exchangeRecord';

/** A patient's documents, in any order. */
export interface PatientDocuments {
  patient: string;
  plans: readonly PlanDocument[];
  sessions: readonly SessionDocument[];
  recordings: readonly RecordingDocument[];
}

/**
 * What other programs are given of a patient. A record of why nothing was done is no session, and is left out.
 *
 * @param at  when it is put together, ISO 8601
 */
export function buildExchangeRecord(documents: PatientDocuments, at: string): ExchangeRecord {
  const { patient, plans, sessions, recordings } = documents;
  const byId = new Map(recordings.map((recording) => [recording.id, recording]));
  const notes = [...plans, ...recordings].map(({ note }) => note).filter((note) => note !== '');
  return {
    patient,
    at,
    note: notes[0] ?? '',
    plans: plans.map(exchangePlan),
    sessions: sessions
      .filter(({ silence }) => silence === null)
      .sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1))
      .map((session) => exchangeSession(session, byId)),
  };
}

function exchangePlan({ id, createdAt, reviewDate, perWeek, items }: PlanDocument): ExchangePlan {
  return {
    id,
    createdAt,
    reviewDate,
    perWeek,
    items: items.map((item) => ({ task: item.task, dose: doseWords(item) })),
  };
}

function exchangeSession(
  session: SessionDocument,
  recordings: ReadonlyMap<string, RecordingDocument>,
): ExchangeSession {
  const { id, startedAt, endedAt, planId, painBefore, painAfter, painLimit, effort, isUnfilmed, remark } =
    session;
  return {
    id,
    startedAt,
    endedAt,
    planId,
    state: stateOf(session),
    endedBecause: session.endedBecause?.reason ?? null,
    signs: session.check?.signs ?? [],
    painBefore,
    painAfter,
    painLimit,
    effort,
    isUnfilmed,
    remark,
    sets: session.sets.map(({ sessionId: recordingId, conditions, ...set }) => {
      const recording = recordingId === null ? undefined : recordings.get(recordingId);
      return { recordingId, ...set, result: recording === undefined ? null : resultOf(recording) };
    }),
  };
}

function stateOf({ endedBecause, endedAt, sets }: SessionDocument): SessionState {
  if (endedBecause !== null) return sets.length === 0 ? 'not-done' : 'stopped';
  return endedAt === null ? 'in-progress' : 'completed';
}

function resultOf({ derived, limits }: RecordingDocument): ExchangeResult {
  const complete = completeRepetitions(derived.repetitions);
  const inLine = countSet(complete, limits);
  const peak = findSetPeak(
    complete.filter(({ judgement }) => judgementOf(judgement, 'knee-angle').verdict !== 'not-measured'),
  );
  return {
    measuringVersion: derived.measuringVersion,
    repetitions: complete.length,
    peak: peak && { meanDeg: peak.meanDeg, semDeg: peak.semDeg },
    inLine: inLine && { low: inLine.low, high: inLine.high, of: inLine.chancesInLine.length },
  };
}
