import type { MissingReason } from '#core/measurement/curve';
import type { MeasureId } from '#core/measures/measures';
import type { Direction } from '#core/scoring/deciding';

export type PainMoment = 'before' | 'during' | 'after';

/** Something in a visit that needs a look before the patient walks in. */
export type Finding =
  /** The highest score, and when it was given. */
  | { kind: 'pain-above-limit'; score: number; limit: number; when: PainMoment }
  | { kind: 'pain-risen'; from: number; to: number; when: Exclude<PainMoment, 'before'> }
  | { kind: 'cut-short'; sets: number; firstReason: string }
  /** The ways the knee went, and the other measures that left their limits. */
  | { kind: 'out-of-line'; repetitions: number; ofMeasured: number; ways: Direction[]; measures: MeasureId[] }
  /** The view was too poor for so many repetitions. */
  | { kind: 'not-measured'; repetitions: number; of: number; reason: MissingReason | null }
  /** Sets that were recorded, and in which no complete repetition was found. */
  | { kind: 'nothing-found'; sets: number }
  | { kind: 'unreadable'; sets: number }
  | { kind: 'sets-missing'; done: number; of: number }
  /** Sets whose careful measuring from the video is still to come. */
  | { kind: 'waiting'; sets: number };
