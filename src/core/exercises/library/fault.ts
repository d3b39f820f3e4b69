/** Parts of a repetition that a cue belongs to. */
export const phases = ['setting-up', 'going', 'turning', 'coming-back'] as const;
export type Phase = (typeof phases)[number];

/** Which way something leaves the line; 'other' = what does not show in the knee's direction. */
export type FaultDirection = 'inward' | 'outward' | 'other';

/** What often goes wrong in an exercise, and what to say then. */
export interface Fault {
  direction: FaultDirection;
  /** When it shows; the first one is the most usual. */
  phases: readonly Phase[];
  /** What is seen, in the trade's terms, for the therapist. */
  seen: string;
  /** What to say to the patient: what to do, in few words. */
  cue: string;
}
