import type { Direction } from '#core/scoring/deciding';
import type { Verdict } from '#core/scoring/verdict';
import type { PlacingCost } from '../placing/placingCost';
import type { Unseen } from './guideState';

/** Why somebody stops, once 'stop' was pressed. */
export const stopPresses = ['stop-pain', 'stop-gave-way', 'stop-locked', 'stop-dizzy', 'stop-other'] as const;
export type StopPress = (typeof stopPresses)[number];

/** What the person can press, where it is offered; see guideView. */
export const guidePresses = [
  'pause',
  'resume',
  'start-anyway',
  'skip-rest',
  'end-set',
  'stop',
  ...stopPresses,
  'end',
] as const;
export type GuidePress = (typeof guidePresses)[number];

/** How one repetition went, as far as is known during counting. */
export interface HeardVerdict {
  verdict: Verdict;
  /** The way the knee went, where the verdict rests on it. */
  direction: Direction | null;
  /** What to do where the verdict rests on another measure. */
  cue: string | null;
  /** What to do, in one or two big words; null where they are not shown. */
  shortCue: string | null;
}

/** Every event for the guide. Time comes only from ticks, at least four a second. */
export type GuideEvent =
  /** @param nowMs  any clock that only goes forward */
  | { kind: 'tick'; nowMs: number }
  /** Whether the person, as filmed now, can be measured; the line says what to move, the cost what it is worth. */
  | { kind: 'placing'; isGood: boolean; line: string | null; cost: PlacingCost }
  /** Whether somebody is in the picture; where that can't be known, why. */
  | { kind: 'person'; isPresent: boolean; unseen?: Unseen }
  /** Null where it can't be inferred. */
  | { kind: 'posture'; posture: 'seated' | 'standing' | null }
  /** Whether the person stands still on both feet: null, or what to do. Only in the quiet stand. */
  | { kind: 'stand'; line: string | null }
  /** A repetition has ended; null where it is not known, or not yet known, how it went. */
  | { kind: 'repetition'; heard: HeardVerdict | null }
  /** How the repetition went that was counted last, where it was not known at once. */
  | { kind: 'judged'; heard: HeardVerdict }
  /** Whether a line is being said or waits to be. */
  | { kind: 'voice'; isSpeaking: boolean }
  /** Whether the device is fast enough to count live. */
  | { kind: 'counting'; works: boolean }
  | { kind: 'camera'; works: boolean }
  | { kind: 'page'; isVisible: boolean }
  /** How much the last set hurt was answered. */
  | { kind: 'pain-told' }
  | { kind: 'press'; press: GuidePress };
