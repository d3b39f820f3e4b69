import type { ExerciseId } from '#core/exercises/exercises';
import type { Side } from '#core/protocol/side';
import type { SignId } from '#core/safety/signs';
import type { EndReason } from '../session/sessionDocument';

/** What other programs are given of a patient: plans, sessions and the figures of their sets. No name, no joints, no video. */
export interface ExchangeRecord {
  /** A pseudonym; the practice knows whose. */
  patient: string;
  /** When it was put together, ISO 8601. */
  at: string;
  /** For demo data: that it is invented. Otherwise empty. */
  note: string;
  plans: ExchangePlan[];
  /** Oldest first. */
  sessions: ExchangeSession[];
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
  painBefore: number | null;
  painAfter: number | null;
  painLimit: number | null;
  effort: number | null;
  isUnfilmed: boolean;
  remark: string;
  sets: ExchangeSet[];
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
  /** Null where nothing was measured. */
  result: ExchangeResult | null;
}

/** The figures of a measured set. */
export interface ExchangeResult {
  measuringVersion: number;
  /** Complete repetitions that count, measured or not. */
  repetitions: number;
  /** Mean largest inward knee angle with its standard error, degrees; null with too few measured repetitions. */
  peak: { meanDeg: number; semDeg: number } | null;
  /** How many were in line, from the 5 % to the 95 % quantile, of those measured; null where none was. */
  inLine: { low: number; high: number; of: number } | null;
}
