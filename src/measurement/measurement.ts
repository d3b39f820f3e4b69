import type { Side } from '../protocol/side';
import type { TaskId } from '../protocol/tasks';
import type { Completeness, RepetitionEvents } from '../segmentation/findRepetitions';
import type { Curve, MissingReason } from './curve';

/** Raised whenever a number could come out differently; see docs/CHANGELOG.md, 'numbers changed'. */
export const measuringVersion = 1;

/** What is measured: which task, with which leg. */
export interface Setup {
  task: TaskId;
  side: Side;
}

/** A value with the moment at which it stands. */
export interface Extreme {
  value: number;
  /** Index on the measurement's time base. */
  sample: number;
  timeMs: number;
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
}

/** Something that the person should know before trusting the numbers. */
export type MeasurementNote =
  | { kind: 'no-person'; framesWithPerson: number; frames: number }
  | { kind: 'no-repetitions' }
  | { kind: 'legs-not-seen'; reason: MissingReason }
  | { kind: 'somebody-else'; frames: number }
  | { kind: 'side-doubtful'; side: Side }
  | { kind: 'few-frames'; frameRateHz: number };

export interface Measurement {
  version: number;
  setup: Setup;
  /** Uniform time base of all curves, ms. */
  timesMs: Float64Array;
  rateHz: number;
  /** Thigh plus shank of the working leg when it is longest in the picture, px; null where it was never seen. */
  legLengthPx: number | null;
  /** Knee projection angle in the picture, degrees, inward positive. */
  kneeAngleDeg: Curve;
  /** Knee off the line hip to ankle, share of leg length, inward positive. */
  kneeDeviation: Curve;
  repetitions: MeasuredRepetition[];
  notes: MeasurementNote[];
}
