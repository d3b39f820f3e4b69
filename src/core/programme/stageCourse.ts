/** How swollen the knee was after a session, against the time before it. */
export const swellings = ['less', 'same', 'more', 'much-more'] as const;
export type Swelling = (typeof swellings)[number];

/** What ended a session, or kept it from beginning. */
export const sessionEvents = ['gave-way', 'locked', 'fell', 'red-flag'] as const;
export type SessionEvent = (typeof sessionEvents)[number];

/** What more swelling means: a day of rest and the same again, or nothing more until the therapist was asked. */
export const swellingRules = ['rest-and-repeat', 'contact'] as const;
export type SwellingRule = (typeof swellingRules)[number];

/** What may have been left open in a session. */
export const unansweredIds = ['pain-before', 'pain-during', 'effort'] as const;
export type UnansweredId = (typeof unansweredIds)[number];

/** A session, as far as it concerns one item. Pain and effort are 0 to 10, shares 0 to 1. */
export interface StageSession {
  /** Whole days from any first day. */
  day: number;
  painBefore: number;
  painDuring: number;
  /** The worst until the next session or for a day; null where it was not answered. */
  worstNextDay: number | null;
  swelling: Swelling;
  event: SessionEvent | null;
  /** Of what the plan asked for. A session cut short by pain shows in `painDuring`. */
  doneShare: number;
  /** Repetitions that were measured, of those done. */
  measuredShare: number;
  /** Expected share of the measured repetitions in line (`countInLine`: `expected` by their number). */
  expectedShare: number;
  /** The share in line that was reached with a chance of 9 in 10 (`countQuantile` of 0.1 by their number). */
  lowerTenthShare: number;
  /** The knee drifted inward during a set, beyond the scatter of its repetitions (`withinSetTrend`). */
  driftInward: boolean;
  effort: number;
  /** Repetitions of a set, as planned. */
  repetitions: number;
  /**
   * What was not answered: nothing is added before it is. The figure itself stands at 0, so that no rise looks smaller
   * than it may have been. Left out where all was answered.
   */
  unanswered?: readonly UnansweredId[];
}

/** What was agreed for an item. */
export interface ItemRules {
  /** Pain above this, 0 to 10, means stop. */
  limit: number;
  /** The knee's usual pain, 0 to 10. */
  usualPain: number;
  swellingRule: SwellingRule;
  /** Repetitions that the stage asks for before the next one, and those that it never goes beyond. */
  upTo: { min: number; max: number };
}

/** What was agreed for an item and how it went at its present stage. */
export interface StageCourse extends ItemRules {
  /** Oldest first. */
  sessions: readonly StageSession[];
}
