import type { Load } from '../protocol/load';
import type { Support } from '../protocol/support';

/** One step of an exercise's way from easy to hard. A practice may have its own instead of those in the library. */
export interface Stage {
  /** Its own within the exercise; documents keep it. */
  id: string;
  /** What is done, one sentence; the figures below are in it. */
  words: string;
  seatHeightCm?: number;
  stepHeightCm?: number;
  /** How far the knee bends, from straight. */
  bendDeg?: number;
  support?: Support;
  load?: Load;
  /** Longer than as it comes. */
  tempo?: { downSeconds?: number; pauseSeconds?: number };
}

/** A stage of a task: what it begins with, and what it asks for before the next one. */
export interface RepetitionStage extends Stage {
  /** Repetitions of a set at first. */
  start: number;
  /** Repetitions that come before the next stage, and those that it never goes beyond. */
  upTo: { min: number; max: number };
}

/** A stage of a hold. */
export interface HoldStage extends Stage {
  holds: { count: number; seconds: number };
}

/** In a set of rising from a seat. Source: as the split stance's own dose; common practice */
export const towardsTwenty = { start: 10, upTo: { min: 20, max: 25 } } as const;

/** In a set of any other task. Source: our choice, no source */
export const towardsFifteen = { start: 10, upTo: { min: 15, max: 15 } } as const;
