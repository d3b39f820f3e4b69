import type { MeasureId, OtherMeasureId } from '../measures/measures';
import type { Side } from '../protocol/side';
import type { TaskId } from '../exercises/exercises';
import type { Completeness, RepetitionEvents } from '../segmentation/findRepetitions';
import type { BendsView } from '../view/bendsView';
import type { YawEstimate } from '../view/fuseCues';
import type { Curve, MissingReason } from './curve';

/** Bump whenever a number could differ; see docs/CHANGELOG.md, 'Numbers changed'. */
export const measuringVersion = 4;

/** What is measured: which task, with which leg. */
export interface Setup {
  task: TaskId;
  side: Side;
  /** Converts shares of leg length to centimetres; not used for measuring. */
  bodyHeightCm?: number | undefined;
  /** How the body was turned in bends before the set, where the camera has not moved since. */
  bends?: BendsView | undefined;
}

/** A value and when it was reached. */
export interface Extreme {
  value: number;
  /** Index on the measurement's time base. */
  sample: number;
  timeMs: number;
  /** Half-width of the error band around the value, same unit; meant to hold the truth in 9 of 10 cases. */
  band: number;
}

export interface MeasuredRepetition {
  /** From 1, in order of time. */
  number: number;
  completeness: Completeness;
  events: RepetitionEvents;
  /** First and last sample in which the working leg bears load. */
  loadedFrom: number;
  loadedTo: number;
  /** Share of the loaded time in which the knee projection angle could be measured, 0 to 1. */
  measuredShare: number;
  /** The reason behind most of what is missing; null where nothing is. */
  mainReason: MissingReason | null;
  /** Largest and smallest knee projection angle while loaded, degrees, inward positive; null where none was measured. */
  kneeAngleMaxDeg: Extreme | null;
  kneeAngleMinDeg: Extreme | null;
  /** Deviation of the knee from the line hip to ankle, share of leg length, where it is greatest either way. */
  kneeDeviation: Extreme | null;
  /** The other measures, each in the window that docs/measurement.md gives; null where none was measured. */
  others: Record<OtherMeasureId, Extreme | null>;
  /** How far each measure went either way while loaded; limits are compared with it. */
  ranges: Record<MeasureId, MeasureRange>;
}

/** How far a measure went each way, in its own unit and sign. */
export interface MeasureRange {
  /** Null where none was measured. */
  min: Extreme | null;
  max: Extreme | null;
  /** Share of the loaded time in which it could be measured, 0 to 1. */
  measuredShare: number;
  /** The reason behind most of what is missing; null where nothing is. */
  mainReason: MissingReason | null;
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
  /** Knee projection angle in the body's frontal plane, from own standing, degrees, inward positive. */
  kneeAngleDeg: Curve;
  /** Knee off the line hip to ankle in the frontal plane, share of leg length, inward positive. */
  kneeDeviation: Curve;
  /** Null where the working leg was never seen. */
  others: Record<OtherMeasureId, Curve> | null;
  repetitions: MeasuredRepetition[];
  notes: MeasurementNote[];
}
