import { findAssessment } from '#core/assessments/assessments';
import { scoreTries } from '#core/assessments/scoreTries';
import { countSet } from '#core/scoring/countSet';
import { findSetPeak } from '#core/scoring/findSetPeak';
import { judgementOf } from '#core/scoring/judge';
import { correctionSentence } from '#words/correctionWords';
import type { QuestionnaireRecord } from '../patient/caseEntries';
import type { AssessmentRecord, PatientDocument } from '../patient/patientDocument';
import { reopeningsOf, type Reopening } from '../patient/reopeningsOf';
import { doseWords } from '../plan/itemFacts';
import type { PlanDocument } from '../plan/planDocument';
import { completeRepetitions } from '../recording/completeRepetitions';
import type { RecordingDocument } from '../recording/recordingDocument';
import { afterwardsOf } from '../session/afterwardsOf';
import type { SessionDocument } from '../session/sessionDocument';
import type {
  ExchangeComplaint,
  ExchangeDayAfter,
  ExchangeGoal,
  ExchangeHand,
  ExchangeLine,
  ExchangePlan,
  ExchangeRecord,
  ExchangeRemark,
  ExchangeResult,
  ExchangeSession,
  ExchangeTest,
  NoMistake,
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
  | 'settles'
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

/** What is handed over of the practice's record. */
export type HandedPatient = Pick<
  PatientDocument,
  | 'note'
  | 'painfulSide'
  | 'since'
  | 'onset'
  | 'sites'
  | 'surgery'
  | 'goals'
  | 'restrictions'
  | 'prescribedRestrictions'
  | 'assessments'
  | 'questionnaires'
  | 'log'
>;

/** A patient's documents, in any order. */
export interface PatientDocuments {
  patient: string;
  plans: readonly PlanDocument[];
  sessions: readonly HandedSession[];
  recordings: readonly HandedRecording[];
  /** The practice's record; left out where it does not go along. */
  record?: HandedPatient;
  /** What the practice reports in words, the title first; left out where no report goes along. */
  report?: readonly ExchangeLine[];
}

/**
 * What other programs are given of a patient. A record of why nothing was done is no session, and is left out.
 *
 * @param at  when it is put together, ISO 8601
 */
export function buildExchangeRecord(documents: PatientDocuments, at: string): ExchangeRecord {
  const { patient, plans, sessions, recordings, record, report = [] } = documents;
  const [title, ...lines] = report;
  const byId = new Map(recordings.map((recording) => [recording.id, recording]));
  const notes = [...(record === undefined ? [] : [record]), ...plans, ...recordings]
    .map(({ note }) => note)
    .filter((note) => note !== '');
  const reopenings = reopeningsOf(record?.log ?? []);
  const oldestFirst = [...sessions].sort((a, b) => (a.startedAt < b.startedAt ? -1 : 1));
  return {
    patient,
    at,
    note: notes[0] ?? '',
    report: title === undefined ? null : { title: title.text, lines },
    ...caseOf(record),
    plans: plans.map(exchangePlan),
    sessions: oldestFirst
      .filter(({ silence }) => silence === null)
      .map((session) => exchangeSession(session, oldestFirst, byId, reopenings.get(session.id) ?? null)),
  };
}

function caseOf(record: HandedPatient | undefined) {
  if (record === undefined)
    return {
      ...{ complaint: null, surgery: null, goals: [], restrictions: '' },
      ...{ prescribedRestrictions: [], tests: [], questionnaires: [], log: [] },
    };
  const { surgery, restrictions, assessments } = record;
  const questionnaires = withoutMistakes(record.questionnaires);
  return {
    complaint: complaintOf(record),
    surgery,
    goals: goalsOf(record.goals, questionnaires),
    restrictions,
    prescribedRestrictions: withoutMistakes(record.prescribedRestrictions),
    tests: withoutMistakes(assessments)
      .filter(({ tries }) => tries.left.length + tries.right.length > 0)
      .map(exchangeTest),
    questionnaires,
    log: record.log,
  };
}

function withoutMistakes<Entry extends { withdrawn: unknown }>(entries: readonly Entry[]) {
  return entries.flatMap(({ withdrawn, ...kept }) => (withdrawn === null ? [kept as NoMistake<Entry>] : []));
}

function complaintOf({ painfulSide, since, onset, sites }: ExchangeComplaint): ExchangeComplaint | null {
  const isNoted = painfulSide !== null || since !== null || onset !== null || sites.length > 0;
  return isNoted ? { painfulSide, since, onset, sites } : null;
}

function goalsOf(
  noted: string,
  questionnaires: readonly Omit<QuestionnaireRecord, 'withdrawn'>[],
): ExchangeGoal[] {
  const last = questionnaires
    .filter(({ of }) => of === 'own-activities')
    .reduce<(typeof questionnaires)[number] | null>(
      (latest, one) => (latest === null || one.on >= latest.on ? one : latest),
      null,
    );
  return [
    ...(noted === '' ? [] : [{ text: noted, questionnaire: null }]),
    ...(last?.answers ?? []).flatMap(({ question }) =>
      question === '' ? [] : [{ text: question, questionnaire: last!.id }],
    ),
  ];
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
}: Omit<AssessmentRecord, 'withdrawn'>): ExchangeTest {
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
  reopened: Reopening | null,
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
    settled: all
      .flatMap(({ settles }) => settles)
      .flatMap(({ visitId, ...settlement }) => (visitId === id ? [settlement] : [])),
    reopened,
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
    remarks: remarksOf(recording),
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

function remarksOf({ review }: HandedRecording): ExchangeRemark[] {
  return [
    ...(review?.remarks ?? []).map((remark) => ({ kind: 'remark' as const, ...remark })),
    ...(review?.cues ?? []).map((cue) => ({ kind: 'cue' as const, ...cue, by: '', at: null })),
  ];
}
