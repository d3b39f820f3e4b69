import type { MeasureId } from '../measures/measures';
import type { Side } from '../protocol/side';
import type { TaskId } from '../exercises/tasks';
import type { Completeness, RepetitionEvents } from '../segmentation/findRepetitions';
import type { BendsView } from '../view/bendsView';
import type { YawEstimate } from '../view/fuseCues';
import type { Curve, MissingReason } from './curve';
import type { MeasureRange } from './measureRange';

/** Raised whenever a number could come out differently; see docs/CHANGELOG.md, 'numbers changed'. */
export const measuringVersion = 4;

/** What is measured: which task, with which leg. */
export interface Setup {
  task: TaskId;
  side: Side;
  /** Turns shares of leg length into centimetres; nothing is measured from it. */
  bodyHeightCm?: number | undefined;
  /** How the body stood to the camera in bends before the set, where the camera has not moved since. */
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
  | { kind: 'side-doubtful'; side: Side }
  | { kind: 'view-turned'; yawDeg: number; sdDeg: number }
  | { kind: 'few-frames'; frameRateHz: number };

/** How the body stood to the camera, and what was taken off for it. */
export interface MeasuredView extends YawEstimate {
  /** Focal length that was assumed, px. */
  focalPx: number;
  /** How far the camera was rolled, degrees; positive = what stands upright leans to the right. Taken out. */
  rollDeg: number;
  /** Knee angle that quiet standing showed and that is taken off where the leg is straight, degrees. */
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
  /** How the body stood to the camera; null where the working leg was never seen. */
  view: MeasuredView | null;
  /** Each measure over time, in its own unit and sign (docs/measurement.md). */
  curves: Record<MeasureId, Curve>;
  repetitions: MeasuredRepetition[];
  notes: MeasurementNote[];
}
