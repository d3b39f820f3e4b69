import type { SessionEvent, SwellingRule, UnansweredId } from './stageCourse';

/**
 * What can be proposed, boldest first.
 *
 * - `step-up`: the next stage, from its first repetitions
 * - `more`: more repetitions at this stage
 * - `stay`: the same
 * - `repeat`: a day of rest, then the same again
 * - `step-down`: the stage before
 * - `hold`: no exercise until therapist and patient have spoken
 */
export const proposalKinds = ['step-up', 'more', 'stay', 'repeat', 'step-down', 'hold'] as const;
export type ProposalKind = (typeof proposalKinds)[number];

/** When pain was asked about. */
export type PainTime = 'before' | 'during' | 'next-day';

/** What speaks against more in one session. */
export type SessionReason = { day: number } & (
  | { kind: 'event'; event: SessionEvent }
  | { kind: 'swollen'; swelling: 'more' | 'much-more'; rule: SwellingRule }
  | { kind: 'strong-pain'; time: PainTime; pain: number; from: number }
  | { kind: 'above-limit'; time: PainTime; pain: number; limit: number }
  | { kind: 'above-usual'; time: PainTime; pain: number; usual: number; allowed: number }
  | { kind: 'pain-risen'; time: PainTime; pain: number; before: number }
  | { kind: 'drift-inward' }
  | { kind: 'not-all-done'; doneShare: number; least: number }
);

/** How many repetitions were in line, session by session; null where too few were measured. */
export interface QualityFigures {
  shares: ({ expected: number; lowerTenth: number } | null)[];
  least: { expected: number; lowerTenth: number };
  goodSessions: number;
}

/** What a proposal rests on, with its figures; `words/proposalSentence.ts` has the sentences. Shares are 0 to 1. */
export type ProposalReason =
  | SessionReason
  | { kind: 'few-sessions'; sessions: number; needed: number }
  | { kind: 'few-days'; sessions: number; days: number; needed: number }
  | { kind: 'next-day-unknown'; day: number }
  | { kind: 'unanswered'; day: number; what: UnansweredId }
  | { kind: 'not-measured'; measuredShares: number[]; least: number; goodSessions: number }
  | ({ kind: 'not-in-line' } & QualityFigures)
  | { kind: 'hard'; day: number; effort: number; most: number }
  | { kind: 'pain-within'; during: number[]; nextDay: number[]; limit: number }
  | ({ kind: 'in-line' } & QualityFigures)
  | { kind: 'all-done'; doneShares: number[]; effort: number }
  | { kind: 'repetitions'; repetitions: number; min: number };

/** What the rules propose for an item; the therapist decides. */
export interface Proposal {
  proposal: ProposalKind;
  /** Of a set, from the next session on; with `more` alone. */
  repetitions?: number;
  /** One at least, the deciding one first. */
  reasons: ProposalReason[];
}
