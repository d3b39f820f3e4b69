import { extent } from 'd3-array';
import type { Task } from '../exercises/exercises';
import { findExcursions, type Excursion } from './findExcursions';
import { movementEdgeMs } from './movementEdgeMs';

/** Times of one repetition, ms from the start of the video; null where it did not happen or was not seen. */
export interface RepetitionEvents {
  /** The body begins to move: the trunk leans forward (rise) or the movement begins. */
  startMs: number;
  /** Seat-off; for tasks with a seat. */
  seatOffMs: number | null;
  /** Standing begins and ends (rise), or null (dip). */
  topMs: number | null;
  topEndMs: number | null;
  /** Turning point of tasks without a seat: lowest (dip) or farthest out (reach). */
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

/** Where a foot is in the picture, as a share of leg length; any origin. */
export interface FootPath {
  x: Float64Array;
  y: Float64Array;
}

export interface RepetitionSignals {
  /** Uniform times, ms. */
  timesMs: Float64Array;
  /** The task's movement, 0 at rest and 1 at the usual far end; empty where nothing moves. */
  excursion: ArrayLike<number>;
  /** Height of the middle of the shoulders, as a share of leg length; any origin. */
  shoulderHeight: Float64Array;
  /** Of both feet. */
  feet: readonly FootPath[];
}

/** Thresholds on the excursion: common practice, no source. */
export const excursionLevels = { rest: 0.25, far: 0.75, least: 0.45 };

/** Within this share of its farthest a movement is at its far end ... */
const thereShare = 0.03;
/** ... and once back by this share it has left it, even if it returns. */
const bounceShare = 0.3;

/** A trough ends where the hips have risen by this share of the movement ... */
const troughDepth = 0.03;
/** ... or where for this long, ms, they have sunk by no more than the points' jitter. */
const settledMs = 200;
const tremble = 0.002;

/** Shoulders that sink by less than this share of leg length show no lean. */
const leastLean = 0.015;

/** A rise of the shoulders ends where it has slowed to this share of its greatest speed. */
const slowedShare = 0.15;

/** Longest time that the trunk leans before seat-off or straightens after seat contact, ms: common practice, no source. */
const longestLeanMs = 2500;

/**
 * A foot repositioned between repetitions moves by less than this share of leg length: common practice, no
 * source.
 */
export const longestShuffle = 0.25;

interface Span {
  from: number;
  to: number;
}

/**
 * Finds the repetitions of a task from the height of hips and shoulders.
 *
 * @returns  in order of time
 */
export function findRepetitions(task: Task, signals: RepetitionSignals): FoundRepetition[] {
  const { excursion, timesMs } = signals;
  const excursions = findExcursions(excursion, excursionLevels).filter(
    (found) => !walks(found, signals.feet),
  );
  return excursions.map((found, index) => {
    const room: Span = {
      from: excursions[index - 1]?.back ?? 0,
      to: excursions[index + 1]?.leave ?? excursion.length - 1,
    };
    const edges = outerEdges(found, room, signals);
    const events =
      task.shape === 'rise' ? riseEvents(found, room, edges, signals) : dipEvents(found, edges, signals);
    return {
      completeness: completeness(found),
      events,
      loadedFrom: nearestSample(timesMs, edges.fromMs),
      loadedTo: nearestSample(timesMs, edges.toMs),
    };
  });
}

/** Whether both feet walk meanwhile: somebody who comes, goes or sits down elsewhere does no repetition. */
function walks({ leave, back }: Excursion, feet: readonly FootPath[]): boolean {
  return feet.every((path) =>
    [path.x, path.y].some((along) => {
      const [least = 0, most = 0] = extent(along.subarray(leave, back + 1));
      return most - least > longestShuffle;
    }),
  );
}

function completeness(found: Excursion): Completeness {
  if (found.cut === 'at-start') return 'cut-at-start';
  if (found.cut === 'at-end') return 'cut-at-end';
  return found.farStart === null ? 'partial' : 'complete';
}

/** When the hips leave their resting height and come back to it. */
function outerEdges(found: Excursion, room: Span, signals: RepetitionSignals) {
  const { timesMs, excursion } = signals;
  const inside = found.leave + 1;
  const before = trough(signals, found.leave, room.from);
  const after = trough(signals, found.back, room.to);
  const from = (level: number) => (sample: number) => (excursion[sample]! - level) / (found.peak - level);
  return {
    fromMs:
      found.cut === 'at-start'
        ? timesMs[found.leave]!
        : movementEdgeMs(timesMs, from(excursion[before]!), Math.min(inside, found.back), -1, before),
    toMs:
      found.cut === 'at-end'
        ? timesMs[found.back]!
        : movementEdgeMs(timesMs, from(excursion[after]!), Math.max(found.back - 1, found.leave), 1, after),
  };
}

/** First trough from one sample towards another, as long as the hips stay at rest. */
function trough({ excursion, timesMs }: RepetitionSignals, from: number, towards: number): number {
  const step = towards < from ? -1 : 1;
  let best = from;
  for (let i = from; i !== towards + step && excursion[i]! <= excursionLevels.rest; i += step) {
    if (excursion[i]! > excursion[best]! + troughDepth) break;
    if (Math.abs(timesMs[i]! - timesMs[best]!) > settledMs) break;
    if (excursion[i]! < excursion[best]! - tremble) best = i;
  }
  return best;
}

interface Edges {
  fromMs: number;
  toMs: number;
}

function riseEvents(
  found: Excursion,
  room: Span,
  { fromMs, toMs }: Edges,
  signals: RepetitionSignals,
): RepetitionEvents {
  const cutStart = found.cut === 'at-start';
  const cutEnd = found.cut === 'at-end';
  const stay = farStay(found, signals);
  return {
    startMs: cutStart ? fromMs : leanMs(fromMs, room.from, -1, signals),
    seatOffMs: cutStart ? null : fromMs,
    topMs: stay?.fromMs ?? null,
    topEndMs: stay?.toMs ?? null,
    bottomMs: null,
    seatContactMs: cutEnd ? null : toMs,
    endMs: cutEnd ? toMs : leanMs(toMs, room.to, 1, signals),
  };
}

function dipEvents(found: Excursion, { fromMs, toMs }: Edges, signals: RepetitionSignals): RepetitionEvents {
  const stay = farStay(found, signals);
  return {
    startMs: fromMs,
    seatOffMs: null,
    topMs: null,
    topEndMs: null,
    bottomMs: stay === null ? null : (stay.fromMs + stay.toMs) / 2,
    seatContactMs: null,
    endMs: toMs,
  };
}

/** When a movement reaches its far end for the last time, and leaves it; null where it never reaches it. */
function farStay(
  { farStart, farEnd, peak, leave, back }: Excursion,
  { timesMs, excursion }: RepetitionSignals,
): Edges | null {
  if (farStart === null) return null;
  const short = (sample: number) => 1 - excursion[sample]! / peak;
  let there = farEnd!;
  while (short(there) > thereShare) there--; // At the peak it is 0.
  let [arriving, leaving] = [there, there];
  while (arriving > leave && short(arriving) < bounceShare) arriving--;
  while (leaving < back && short(leaving) < bounceShare) leaving++;
  let farthest = there;
  for (let i = arriving; i <= leaving; i++) if (excursion[i]! > excursion[farthest]!) farthest = i;
  return {
    fromMs: movementEdgeMs(timesMs, short, arriving, 1, farthest),
    toMs: movementEdgeMs(timesMs, short, leaving, -1, farthest),
  };
}

/**
 * When the trunk begins to lean before seat-off (step -1) or is upright again after seat contact (step 1): seen from
 * the front, the shoulders sink while it leans.
 */
function leanMs(
  seatMs: number,
  stop: number,
  step: 1 | -1,
  { timesMs, shoulderHeight }: RepetitionSignals,
): number {
  const seat = nearestSample(timesMs, seatMs);
  let upright = seat;
  let fastest = 0;
  for (let i = seat; i !== stop && Math.abs(timesMs[i]! - seatMs) <= longestLeanMs; i += step) {
    const rise = shoulderHeight[i + step]! - shoulderHeight[i]!;
    fastest = Math.max(fastest, rise);
    if (shoulderHeight[i]! - shoulderHeight[seat]! > leastLean && rise < slowedShare * fastest) break;
    upright = i + step;
  }
  const drop = shoulderHeight[upright]! - shoulderHeight[seat]!;
  if (drop <= 0) return seatMs;
  const distance = (sample: number) => (shoulderHeight[upright]! - shoulderHeight[sample]!) / drop;
  return movementEdgeMs(timesMs, distance, seat, step, upright);
}

/** Sample of a uniform time base nearest to a time. */
function nearestSample(timesMs: Float64Array, timeMs: number): number {
  const last = timesMs.length - 1;
  if (last < 1) return 0;
  return Math.round(((timeMs - timesMs[0]!) / (timesMs[last]! - timesMs[0]!)) * last);
}
