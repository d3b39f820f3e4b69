import { quantile } from 'd3-array';
import type { Task } from '../protocol/tasks';
import { findExcursions, type Excursion } from './findExcursions';

/** Times of one repetition, ms from the start of the video; null where it did not happen or was not seen. */
export interface RepetitionEvents {
  /** The body begins to move: the trunk leans forward (rise) or the hips begin to sink (dip). */
  startMs: number;
  /** Seat-off; for tasks with a seat. */
  seatOffMs: number | null;
  /** Standing begins and ends (rise), or null (dip). */
  topMs: number | null;
  topEndMs: number | null;
  /** Lowest point; for tasks that dip. */
  bottomMs: number | null;
  /** Seat contact; for tasks with a seat. */
  seatContactMs: number | null;
  endMs: number;
}

export type Completeness = 'complete' | 'partial' | 'cut-at-start' | 'cut-at-end';

export interface FoundRepetition {
  completeness: Completeness;
  events: RepetitionEvents;
  /** Samples in which the working leg bears load: seat-off to seat contact, or start to end of a dip. */
  loadedFrom: number;
  loadedTo: number;
}

export interface RepetitionSignals {
  /** Uniform times, ms. */
  timesMs: Float64Array;
  /** Height of the middle of the hips above the working ankle, as a share of leg length. */
  hipHeight: Float64Array;
  /** Height of the middle of the shoulders above the working ankle, as a share of leg length. */
  shoulderHeight: Float64Array;
}

/** Hips that rise or sink by less than this share of leg length make no repetition. */
const smallestRange = 0.05;

/** Thresholds on hip height, scaled to 0 at rest and 1 at the far end: common practice, no source. */
const levels = { rest: 0.25, far: 0.75, least: 0.45 };

/** A level counts as reached when this share of the movement is left. */
const settled = 0.03;

/**
 * Finds the repetitions of a task from the height of hips and shoulders.
 *
 * @returns  in order of time; empty where the hips never move enough
 */
export function findRepetitions(task: Task, signals: RepetitionSignals): FoundRepetition[] {
  const scaled = scaleToExcursion(task, signals.hipHeight);
  if (scaled === null) return [];
  const excursions = findExcursions(scaled, levels);
  return excursions.map((excursion, index) => {
    const between = {
      from: excursions[index - 1]?.back ?? 0,
      to: excursions[index + 1]?.leave ?? scaled.length - 1,
    };
    return task.shape === 'rise'
      ? describeRise(excursion, between, scaled, signals)
      : describeDip(excursion, between, scaled, signals.timesMs);
  });
}

/** Hip height turned so that rest is 0 and the usual far end is 1; null where there is no movement to speak of. */
function scaleToExcursion(task: Task, hipHeight: Float64Array): Float64Array | null {
  const low = quantile(hipHeight, 0.05);
  const high = quantile(hipHeight, 0.95);
  if (low === undefined || high === undefined || high - low < smallestRange) return null;
  const [rest, far] = task.shape === 'rise' ? [low, high] : [high, low];
  return hipHeight.map((value) => (value - rest) / (far - rest));
}

interface Span {
  from: number;
  to: number;
}

function describeRise(
  excursion: Excursion,
  between: Span,
  scaled: Float64Array,
  { timesMs, shoulderHeight }: RepetitionSignals,
): FoundRepetition {
  const cutStart = excursion.cut === 'at-start';
  const cutEnd = excursion.cut === 'at-end';
  const seatOff = cutStart ? excursion.leave : settleBackward(scaled, excursion.leave, between.from);
  const seatContact = cutEnd ? excursion.back : settleForward(scaled, excursion.back, between.to);
  const start = cutStart ? seatOff : leanOnset(shoulderHeight, seatOff, between.from, -1);
  const end = cutEnd ? seatContact : leanOnset(shoulderHeight, seatContact, between.to, 1);
  const top = excursion.farStart === null ? null : plateau(scaled, excursion, excursion.peak * (1 - settled));
  return {
    completeness: completeness(excursion),
    events: {
      startMs: timesMs[start]!,
      seatOffMs: cutStart ? null : timesMs[seatOff]!,
      topMs: top === null ? null : timesMs[top.from]!,
      topEndMs: top === null ? null : timesMs[top.to]!,
      bottomMs: null,
      seatContactMs: cutEnd ? null : timesMs[seatContact]!,
      endMs: timesMs[end]!,
    },
    loadedFrom: seatOff,
    loadedTo: seatContact,
  };
}

function describeDip(
  excursion: Excursion,
  between: Span,
  scaled: Float64Array,
  timesMs: Float64Array,
): FoundRepetition {
  const start =
    excursion.cut === 'at-start' ? excursion.leave : settleBackward(scaled, excursion.leave, between.from);
  const end = excursion.cut === 'at-end' ? excursion.back : settleForward(scaled, excursion.back, between.to);
  let bottom = excursion.leave;
  for (let i = excursion.leave; i <= excursion.back; i++) if (scaled[i]! > scaled[bottom]!) bottom = i;
  return {
    completeness: completeness(excursion),
    events: {
      startMs: timesMs[start]!,
      seatOffMs: null,
      topMs: null,
      topEndMs: null,
      bottomMs: excursion.farStart === null ? null : timesMs[bottom]!,
      seatContactMs: null,
      endMs: timesMs[end]!,
    },
    loadedFrom: start,
    loadedTo: end,
  };
}

function completeness(excursion: Excursion): Completeness {
  if (excursion.cut === 'at-start') return 'cut-at-start';
  if (excursion.cut === 'at-end') return 'cut-at-end';
  return excursion.farStart === null ? 'partial' : 'complete';
}

/** From a sample below the resting threshold back to where the movement out of rest began. */
function settleBackward(scaled: Float64Array, from: number, stop: number): number {
  let lowest = from;
  for (let i = from; i >= stop && scaled[i]! <= levels.rest; i--)
    if (scaled[i]! < scaled[lowest]!) lowest = i;
  let at = from;
  while (at > lowest && scaled[at]! > scaled[lowest]! + settled) at--;
  return at;
}

/** The mirror image of settleBackward. */
function settleForward(scaled: Float64Array, from: number, stop: number): number {
  let lowest = from;
  for (let i = from; i <= stop && scaled[i]! <= levels.rest; i++)
    if (scaled[i]! < scaled[lowest]!) lowest = i;
  let at = from;
  while (at < lowest && scaled[at]! > scaled[lowest]! + settled) at++;
  return at;
}

/** First and last sample of an excursion above a level. */
function plateau(scaled: Float64Array, { leave, back }: Excursion, level: number): Span {
  let from = leave;
  while (from < back && scaled[from]! < level) from++;
  let to = back;
  while (to > from && scaled[to]! < level) to--;
  return { from, to };
}

/**
 * Where the forward lean of the trunk begins before seat-off (step -1) or ends after seat contact (step 1): seen from
 * the front, the shoulders sink while the trunk leans.
 */
function leanOnset(shoulderHeight: Float64Array, from: number, stop: number, step: 1 | -1): number {
  let upright = from;
  for (let i = from; i !== stop + step; i += step) {
    if (shoulderHeight[i]! > shoulderHeight[upright]!) upright = i;
  }
  const drop = shoulderHeight[upright]! - shoulderHeight[from]!;
  const level = shoulderHeight[upright]! - 0.1 * drop;
  let at = from;
  while (at !== upright && shoulderHeight[at]! < level) at += step;
  return at;
}
