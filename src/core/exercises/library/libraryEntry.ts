/** Parts of a repetition that a cue belongs to. */
export const phases = ['setting-up', 'going', 'turning', 'coming-back'] as const;
export type Phase = (typeof phases)[number];

/** Which way something leaves the line; 'other' = what is not told by the knee's direction. */
export type FaultDirection = 'inward' | 'outward' | 'other';

/** What often goes wrong in a task, and what to say then. */
export interface Fault {
  direction: FaultDirection;
  /** When it shows; the first one is the most usual. */
  phases: readonly Phase[];
  /** What is seen, in the trade's terms, for the therapist. */
  seen: string;
  /** What to say to the patient: what to do, in few words. */
  cue: string;
}

/** How much of a task at first, for the treating professional to change. */
export interface DefaultDose {
  sets: number;
  /** Of one set; null for a hold. */
  repetitions: number | null;
  /** Of one set; null for what is repeated. */
  holds: { count: number; seconds: number } | null;
  restSeconds: number;
  /** Good repetitions in a row that a treatment works up to; null where nothing is known of it. */
  worksUpTo: { min: number; max: number } | null;
  /** Where the figures come from. */
  source: string;
}

/** What the task library says of a task; set-up, kit and the camera's place stand in protocol/taskSetups. */
export interface LibraryEntry {
  /** What it is for, one sentence. */
  purpose: string;
  /** How it is done, in order; `{side}` is the working side and `{other}` the other one. */
  steps: readonly string[];
  /** From easier to harder. */
  stages: readonly string[];
  /** Those of each direction in the order in which they are usual. */
  faults: readonly Fault[];
  /** Beside those that hold for every task. */
  cautions: readonly string[];
  dose: DefaultDose;
}

/** Of every dose, order of stages, fault and cue that no study is named for. */
export const commonPractice = 'common practice, no source';
