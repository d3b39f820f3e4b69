import { deviation } from 'd3-array';
import { findTask } from '../exercises/exercises';
import { otherSide, type Side } from '../protocol/side';
import { medianOf } from '../signal/quantileOf';
import type { MeasuredRepetition, Setup } from './measurement';
import { missingAt, pointAt, type SmoothPoints } from './smoothPoints';

/** The other ankle must be lower in the picture by this share of leg length before the side is doubted. */
const leastLead = 0.03;
/** The working foot must move this many times more than the other one before the side is doubted. */
const stillerBy = 2;

/**
 * Whether the other leg looks like the working one: its foot is nearer to the camera in a split stance, or it
 * keeps still while the 'working' foot moves.
 */
export function doubtSide(
  points: SmoothPoints,
  { task, side }: Setup,
  legLengthPx: number | null,
  repetitions: readonly MeasuredRepetition[],
): boolean {
  if (legLengthPx === null || repetitions.length === 0) return false;
  const working = anklesPx(points, side, repetitions);
  const other = anklesPx(points, otherSide(side), repetitions);
  if (working.y.length === 0 || other.y.length === 0) return false;
  const { workingFoot } = findTask(task);
  if (workingFoot === 'either') return false;
  if (workingFoot === 'nearer') {
    return medianOf(other.y)! - medianOf(working.y)! > leastLead * legLengthPx;
  }
  return spread(working) > stillerBy * spread(other) && spread(working) > leastLead * legLengthPx;
}

interface Positions {
  x: number[];
  y: number[];
}

function anklesPx(points: SmoothPoints, side: Side, repetitions: readonly MeasuredRepetition[]): Positions {
  const ankle = points.point(`${side}_ankle`);
  const seen: Positions = { x: [], y: [] };
  for (const { loadedFrom, loadedTo } of repetitions) {
    for (let i = loadedFrom; i <= loadedTo; i++) {
      if (missingAt([ankle], i) !== 0) continue;
      const { x, y } = pointAt(ankle, i);
      seen.x.push(x);
      seen.y.push(y);
    }
  }
  return seen;
}

function spread({ x, y }: Positions): number {
  return Math.hypot(deviation(x) ?? 0, deviation(y) ?? 0);
}
