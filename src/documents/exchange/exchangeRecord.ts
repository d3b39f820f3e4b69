import type { AssessmentId } from '#core/assessments/assessments';
import type { ExerciseId } from '#core/exercises/exercises';
import type { Swelling } from '#core/programme/stageCourse';
import type { Side } from '#core/protocol/side';
import type { SignId } from '#core/safety/signs';
import type { QuestionnaireRecord, Restriction } from '../patient/caseEntries';
import type { LogEntry } from '../patient/logEntry';
import type { PatientNotes } from '../patient/patientDocument';
import type { Reopening } from '../patient/reopeningsOf';
import type { EndReason, SessionDocument, SessionSet, Settlement } from '../session/sessionDocument';

/** What other programs are given of a patient: plans, sessions and the figures of their sets. No name, no joints, no video. */
export interface ExchangeRecord {
  /** A pseudonym; the practice knows whose. */
  patient: string;
  /** When it was put together, ISO 8601. */
  at: string;
  /** For demo data: that it is invented. Otherwise empty. */
  note: string;
  /** What the practice reports of the patient in words; null where no report goes along. */
  report: ExchangeReport | null;
  /** Where it hurts and since when; null where nothing of it is noted. */
  complaint: ExchangeComplaint | null;
  surgery: PatientNotes['surgery'];
  /** What the patient wants to reach: as it is noted, then the own activities of the last time they were asked. */
  goals: ExchangeGoal[];
  /** What is not allowed, in words; may be empty. */
  restrictions: string;
  /** As a surgeon or doctor set them, whether they still count or not; mistakes are left out. */
  prescribedRestrictions: ExchangeRestriction[];
  plans: ExchangePlan[];
  /** Oldest first. */
  sessions: ExchangeSession[];
  /** Tests of function of which a leg was done, in the order in which they were written down; mistakes are left out. */
  tests: ExchangeTest[];
  /** As they were answered, in the order in which they were entered; mistakes are left out. */
  questionnaires: ExchangeQuestionnaire[];
  /** Who did what, as it was signed. */
  log: LogEntry[];
}

export type ExchangeComplaint = Pick<PatientNotes, 'painfulSide' | 'since' | 'onset' | 'sites'>;

export interface ExchangeGoal {
  text: string;
  /** Of an own activity: the questionnaire in which it was named. Null for a goal that is noted in words. */
  questionnaire: string | null;
}

/** An entry that is no mistake. Each kind of a union by itself, unlike `Omit`. */
export type NoMistake<Entry> = Entry extends unknown ? Omit<Entry, 'withdrawn'> : never;
export type ExchangeRestriction = NoMistake<Restriction>;

export type ExchangeQuestionnaire = Omit<QuestionnaireRecord, 'withdrawn'>;

export interface ExchangeTest {
  id: string;
  at: string;
  /** Initials. */
  by: string;
  test: AssessmentId;
  /** What the protocol fixes, as it was done; may be empty. */
  asDone: string;
  /** Of each leg; none where it was not done. */
  tries: Record<Side, number[]>;
  /** Of each leg's tries, by the protocol; null where it was not done. */
  results: Record<Side, number | null>;
  worstPain: number | null;
  remark: string;
}

/** One line of a report: what it is about, which may be empty, and what it says. */
export interface ExchangeLine {
  head: string;
  text: string;
}

export interface ExchangeReport {
  title: string;
  lines: ExchangeLine[];
}

export interface ExchangePlan {
  id: string;
  createdAt: string;
  reviewDate: string | null;
  perWeek: number | null;
  items: { task: ExerciseId; dose: string }[];
}

/** How a session went; `not-done`: it ended before the first set, for a reason of the body. */
export const sessionStates = ['completed', 'stopped', 'not-done', 'in-progress'] as const;
export type SessionState = (typeof sessionStates)[number];

export interface ExchangeSession {
  id: string;
  startedAt: string;
  endedAt: string | null;
  planId: string | null;
  state: SessionState;
  endedBecause: EndReason | null;
  /** Warning signs that were said to apply. */
  signs: SignId[];
  /** Who says that what was said in this session is settled, in the order of the sessions in which that was said. */
  settled: ExchangeSettlement[];
  /** Who last opened again what was settled; null where nobody did. */
  reopened: Reopening | null;
  painBefore: number | null;
  painAfter: number | null;
  /** Each knee by itself; null where one was asked. */
  painBySide: SessionDocument['painBySide'];
  painLimit: number | null;
  /** How the knee was in the day after; null where nobody was asked. */
  dayAfter: ExchangeDayAfter | null;
  effort: number | null;
  isUnfilmed: boolean;
  remark: string;
  sets: ExchangeSet[];
}

export type ExchangeSettlement = Omit<Settlement, 'visitId'>;

/** Answered before a later session. */
export interface ExchangeDayAfter {
  /** When that session began. */
  answeredAt: string;
  /** Most pain in the day after, 0 to 10; null where that was not answered. */
  worst: number | null;
  /** Against the time before; null where that was not answered. */
  swelling: Swelling | null;
}

export interface ExchangeSet {
  recordingId: string | null;
  /** Index in the plan. */
  item: number;
  task: ExerciseId;
  side: Side;
  number: number;
  prescribedRepetitions: number | null;
  painDuring: number | null;
  cutShort: string | null;
  heldMs: number | null;
  /** Under what it was done; null where nothing was noted. */
  conditions: SessionSet['conditions'];
  /** Null where nothing was measured. */
  result: ExchangeResult | null;
}

/** The figures of a measured set, and where they come from. */
export interface ExchangeResult {
  recordedAt: string;
  measuringVersion: number;
  /** The pose network: its name, size and weights. */
  network: string;
  /** Whether easy bends were filmed before the set, from which the view is read. */
  bendsFilmed: boolean;
  /** Complete repetitions that count, measured or not. */
  repetitions: number;
  /** Mean largest inward knee angle with its standard error, degrees; null with too few measured repetitions. */
  peak: { meanDeg: number; semDeg: number } | null;
  /** How many were in line, from the 5 % to the 95 % quantile, of those measured; null where none was. */
  inLine: { low: number; high: number; of: number } | null;
  /** Of the knee angle, as the therapist set them; degrees, inward above 0. */
  limitsDeg: { least: number; most: number };
  /** What somebody did to it by hand: corrections first, then limits, then that it was reviewed. */
  hands: ExchangeHand[];
  /** What a therapist wrote beside it. */
  remarks: ExchangeRemark[];
}

/** `remark`: for colleagues; `cue`: said to the patient with one repetition. */
export const remarkKinds = ['remark', 'cue'] as const;

export interface ExchangeRemark {
  kind: (typeof remarkKinds)[number];
  text: string;
  /** In the video, ms; null for a remark on the whole set. */
  atMs: number | null;
  /** Initials or a role; empty where none was given, and for a cue. */
  by: string;
  /** Null for a cue. */
  at: string | null;
}

export const handKinds = ['corrected', 'limits', 'reviewed'] as const;

export interface ExchangeHand {
  what: (typeof handKinds)[number];
  /** What a correction changed, in words; otherwise empty. */
  said: string;
  /** Initials or a role; empty where none was given. */
  by: string;
  at: string;
}
