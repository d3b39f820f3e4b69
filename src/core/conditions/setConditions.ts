import type { TaskId } from '../exercises/exercises';
import type { FeedbackMode } from '../protocol/feedback';
import type { Load } from '../protocol/load';
import type { Side } from '../protocol/side';
import type { Support } from '../protocol/support';

/** What was worn on the feet. */
export const wornFootwear = ['shoes', 'bare-feet'] as const;
export type WornFootwear = (typeof wornFootwear)[number];

/** Where the leg that does not work was held. */
export const freeLegs = ['behind', 'front', 'beside'] as const;
export type FreeLeg = (typeof freeLegs)[number];

/**
 * Under what a set was done and measured, as far as it decides whether two sets can be compared.
 *
 * Missing: null = not noted. A set without load has the load `{ kind: 'none' }`, not null.
 */
export interface SetConditions {
  task: TaskId;
  /** The person's own working side. */
  side: Side;
  /** Of the item's stages; null also where the item has none. */
  stage: string | null;
  seatHeightCm: number | null;
  stepHeightCm: number | null;
  support: Support | null;
  load: Load | null;
  footwear: WornFootwear | null;
  freeLeg: FreeLeg | null;
  feedback: FeedbackMode | null;
  /** Whether easy bends were filmed before the set, from which the view is read. */
  bendsFilmed: boolean;
  /** Done as a test; otherwise as training. */
  isTest: boolean;
  measuringVersion: number;
}

export type ConditionId = keyof SetConditions;

/** The part of them that a session notes with a set; exercise and leg stand beside it, the rest in the recording. */
export type NotedConditions = Omit<SetConditions, 'task' | 'side' | 'bendsFilmed' | 'measuringVersion'>;
