import { findAssessment } from '#core/assessments/assessments';
import { scoreTries } from '#core/assessments/scoreTries';
import { countSet } from '#core/scoring/countSet';
import { findSetPeak } from '#core/scoring/findSetPeak';
import { judgementOf } from '#core/scoring/judge';
import { correctionSentence } from '#words/correctionWords';
import type { QuestionnaireRecord } from '../patient/caseEntries';
import type { AssessmentRecord } from '../patient/patientDocument';
import { doseWords } from '../plan/itemFacts';
import type { PlanDocument } from '../plan/planDocument';
import { completeRepetitions } from '../recording/completeRepetitions';
import type { RecordingDocument } from '../recording/recordingDocument';
import { afterwardsOf } from '../session/afterwardsOf';
import type { SessionDocument } from '../session/sessionDocument';
import type {
  ExchangeDayAfter,
  ExchangeHand,
  ExchangeLine,
  ExchangePlan,
  ExchangeRecord,
  ExchangeResult,
  ExchangeSession,
  ExchangeTest,
  SessionState,
} from './exchangeRecord';

/** What is handed over of a session. */
export type HandedSession = Pick<
  SessionDocument,
  | 'id'
  | 'startedAt'
  | 'endedAt'
  | 'planId'
  | 'painBefore'
  | 'painAfter'
  | 'painBySide'
  | 'painLimit'
  | 'check'
  | 'afterLast'
  | 'endedBecause'
  | 'isUnfilmed'
  | 'silence'
  | 'effort'
  | 'remark'
  | 'sets'
>;

/** What is handed over of a recording: no joints. */
export interface HandedRecording extends Pick<
  RecordingDocument,
  'id' | 'createdAt' | 'note' | 'setup' | 'limits' | 'corrections' | 'review'
> {
  observed: Pick<RecordingDocument['observed'], 'model'>;
  derived: Pick<RecordingDocument['derived'], 'measuringVersion' | 'repetitions'>;
}

/** A patient's documents, in any order. */
export interface PatientDocuments {
  patient: string;
  plans: readonly PlanDocument[];
  sessions: readonly HandedSession[];
  recordings: readonly HandedRecording[];
  /** Tests of function, as the practice's record has them; left out where none goes along. */
  tests?: readonly AssessmentRecord[];
  /** Questionnaires, likewise. */
  questionnaires?: readonly QuestionnaireRecord[];
  /** What the practice reports in words, the title first; left out where no report goes along. */
  report?: readonly ExchangeLine[];
}

/**
 * What other programs are given of a patient. A record of why nothing was done is no session, and is left out.
 *
 * @param at  when it is put together, ISO 8601
 */
export function buildExchangeRecord(documents: PatientDocuments, at: string): ExchangeRecord {
  const { patient, plans, sessions, recordings, tests = [], questionnaires = [], report = [] } = documents;
  const [title, ...lines] = report;
  const byId = new Map(recordings.map((recording) => [recording.id, recording]));
  const notes = [...plans, ...recordings].map(({ note }) => note).filter((note) => note !== '');
  return {
    patient,
    at,
    note: notes[0] ?? '',
    report: title === undefined ? null : { title: title.text, lines },
    plans: plans.map(exchangePlan),
    sessions: sessions
      .filter(({ silence }) => silence === null)
      .sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1))
      .map((session) => exchangeSession(session, sessions, byId)),
    tests: tests
      .filter(({ withdrawn, tries }) => withdrawn === null && tries.left.length + tries.right.length > 0)
      .map(exchangeTest),
    questionnaires: questionnaires.flatMap(({ withdrawn, ...kept }) => (withdrawn === null ? [kept] : [])),
  };
}

function exchangeTest({
  id,
  at,
  by,
  test,
  asDone,
  tries,
  worstPain,
  remark,
}: AssessmentRecord): ExchangeTest {
  const { left, right } = tries;
  const assessment = findAssessment(test);
  const results = { left: scoreTries(assessment, left), right: scoreTries(assessment, right) };
  return { id, at, by, test, asDone, tries, results, worstPain, remark };
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
  session: HandedSession,
  all: readonly HandedSession[],
  recordings: ReadonlyMap<string, HandedRecording>,
): ExchangeSession {
  const { id, startedAt, endedAt, planId, painBefore, painAfter, painBySide, painLimit } = session;
  const { effort, isUnfilmed, remark } = session;
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
    painBySide,
    painLimit,
    dayAfter: dayAfterOf(id, all),
    effort,
    isUnfilmed,
    remark,
    sets: session.sets.map(({ sessionId: recordingId, ...set }) => {
      const recording = recordingId === null ? undefined : recordings.get(recordingId);
      return { recordingId, ...set, result: recording === undefined ? null : resultOf(recording) };
    }),
  };
}

function dayAfterOf(id: string, sessions: readonly HandedSession[]): ExchangeDayAfter | null {
  const said = afterwardsOf(id, sessions);
  const later = sessions.find(({ afterLast }) => afterLast !== null && afterLast === said);
  if (said === null || later === undefined) return null;
  return { answeredAt: later.startedAt, worst: said.worst, swelling: said.swelling };
}

function stateOf({ endedBecause, endedAt, sets }: HandedSession): SessionState {
  if (endedBecause !== null) return sets.length === 0 ? 'not-done' : 'stopped';
  return endedAt === null ? 'in-progress' : 'completed';
}

function resultOf(recording: HandedRecording): ExchangeResult {
  const { createdAt, derived, limits, observed, setup } = recording;
  const complete = completeRepetitions(derived.repetitions);
  const inLine = countSet(complete, limits);
  const peak = findSetPeak(
    complete.filter(({ judgement }) => judgementOf(judgement, 'knee-angle').verdict !== 'not-measured'),
  );
  const { name, size, weights } = observed.model;
  return {
    recordedAt: createdAt,
    measuringVersion: derived.measuringVersion,
    network: `${name} ${size}, ${weights}`,
    bendsFilmed: setup.bends !== undefined,
    repetitions: complete.length,
    peak: peak && { meanDeg: peak.meanDeg, semDeg: peak.semDeg },
    inLine: inLine && { low: inLine.low, high: inLine.high, of: inLine.chancesInLine.length },
    limitsDeg: limits['knee-angle'],
    hands: handsOf(recording),
  };
}

function handsOf({ corrections = [], review }: HandedRecording): ExchangeHand[] {
  return [
    ...corrections.map(({ change, by, at }) => ({
      what: 'corrected' as const,
      said: correctionSentence(change),
      by,
      at,
    })),
    ...(review?.limitsSet ?? []).map(({ by, at }) => ({ what: 'limits' as const, said: '', by, at })),
    ...(review?.reviewed ? [{ what: 'reviewed' as const, said: '', ...review.reviewed }] : []),
  ];
}
