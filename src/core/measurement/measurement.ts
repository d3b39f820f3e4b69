import type { TaskId } from '../exercises/exercises';
import type { MeasureId } from '../measures/measures';
import type { Side } from '../protocol/side';
import type { Completeness, RepetitionEvents } from '../segmentation/findRepetitions';
import type { BendsView } from '../view/bendsView';
import type { YawEstimate } from '../view/fuseCues';
import type { Curve, MissingReason } from './curve';
import type { Facing } from './findFacing';
import type { MeasureRange } from './measureRange';

/** Bump whenever a number could differ; see docs/CHANGELOG.md, 'Numbers changed'. */
export const measuringVersion = 9;

/** What is measured: which task, with which leg. */
export interface Setup {
  task: TaskId;
  side: Side;
  /** Converts shares of leg length to centimetres; not used for measuring. */
  bodyHeightCm?: number | undefined;
  /** How the body was turned in bends before the set, where the camera has not moved since. */
  bends?: BendsView | undefined;
}

export interface MeasuredRepetition {
  /** From 1, in order of time. */
  number: number;
  completeness: Completeness;
  events: RepetitionEvents;
  /** First and last sample in which the working leg bears load. */
  loadedFrom: number;
  loadedTo: number;
  /** How far each measure went either way while loaded, in its own unit and sign. */
  ranges: Record<MeasureId, MeasureRange>;
}

/** Something that the person should know before trusting the numbers. */
export type MeasurementNote =
  | { kind: 'no-person'; framesWithPerson: number; frames: number }
  | { kind: 'no-repetitions' }
  | { kind: 'legs-not-seen'; reason: MissingReason }
  | { kind: 'somebody-else'; frames: number }
  | { kind: 'not-facing'; facing: Exclude<Facing, 'front'> }
  | { kind: 'side-doubtful'; side: Side }
  | { kind: 'view-turned'; yawDeg: number; sdDeg: number }
  | { kind: 'few-frames'; frameRateHz: number };

/** How the body was turned from the camera, and what was subtracted for it. */
export interface MeasuredView extends YawEstimate {
  /** Focal length that was assumed, px. */
  focalPx: number;
  /** How far the camera was rolled, degrees; positive = upright things lean to the right. Already removed. */
  rollDeg: number;
  /** Knee angle in quiet standing, subtracted where the leg is straight, degrees. */
  standingOffsetDeg: number;
}

export interface Measurement {
  version: number;
  setup: Setup;
  /** Uniform time base of all curves, ms. */
  timesMs: Float64Array;
  rateHz: number;
  /** Thigh plus shank of the working leg when it is longest in the picture, px; null where it was never seen. */
  legLengthPx: number | null;
  /** How the body was turned from the camera; null where the working leg was never seen. */
  view: MeasuredView | null;
  /** Each measure over time, in its own unit and sign (docs/measurement.md). */
  curves: Record<MeasureId, Curve>;
  repetitions: MeasuredRepetition[];
  notes: MeasurementNote[];
}

/** Whether it looks as if the other leg worked. */
export function isSideDoubtful({ notes }: Pick<Measurement, 'notes'>): boolean {
  return notes.some(({ kind }) => kind === 'side-doubtful');
}
