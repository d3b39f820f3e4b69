import { clamp } from '../clamp';
import type { Point } from '../geometry/point';
import { findJumps } from '../keypoints/findJumps';
import type { KeypointName } from '../keypoints/keypointNames';
import type { KeypointTrack } from '../keypoints/keypointTrack';
import { observedPoint } from '../keypoints/observedPoint';
import { butterworthLowPass } from '../signal/butterworthLowPass';
import { medianOf } from '../signal/quantileOf';
import { resample, uniformTimesMs, type UniformSignal } from '../signal/resample';
import { smoothRuns } from '../signal/smoothRuns';
import { reasonCode } from './curve';

/** Cut-off of the low-pass over the points, Hz: limb movement in these tasks is well below it (common practice). */
const cutoffHz = 6;
/** The time base is at least as fine as the first and no finer than the second, Hz. */
const rateRangeHz = { min: 30, max: 60 };

/** Standard deviation of a normal distribution over its median absolute deviation. */
const madToSd = 1.4826;

/** More samples than this do not improve the estimate of the jitter. */
const mostJitterSamples = 2000;

export interface SmoothPoint {
  xPx: UniformSignal;
  yPx: UniformSignal;
  /** Jitter of the points that remains after smoothing, one standard deviation, px. */
  jitterPx: number;
}

export interface SmoothPoints {
  timesMs: Float64Array;
  rateHz: number;
  /** Usual rate of the recording itself, Hz. */
  frameRateHz: number;
  /** Frames in which the tracker followed somebody else. */
  jumpedFrames: number;
  point(name: KeypointName): SmoothPoint;
}

/**
 * Resamples body points to a uniform time base and smooths them without a shift in time; each point once, on
 * demand.
 */
export function smoothPoints(track: KeypointTrack): SmoothPoints {
  const { timesMs: seenMs } = track;
  const frameIntervalMs =
    medianOf(seenMs.subarray(1).map((timeMs, i) => timeMs - seenMs[i]!)) ?? 1000 / rateRangeHz.min;
  const frameRateHz = 1000 / frameIntervalMs;
  const rateHz = clamp(Math.round(frameRateHz), rateRangeHz.min, rateRangeHz.max);
  const timesMs =
    seenMs.length === 0 ? new Float64Array() : uniformTimesMs(seenMs[0]!, seenMs.at(-1)!, rateHz);
  const filter = butterworthLowPass(cutoffHz, rateHz, 2);
  const jumped = findJumps(track);
  const known = new Map<KeypointName, SmoothPoint>();

  const read = (name: KeypointName): SmoothPoint => {
    const { xPx, yPx, problems } = observedPoint(track, name, jumped);
    const missing = new Uint8Array(problems.length);
    problems.forEach((problem, frame) => {
      if (problem !== null) missing[frame] = reasonCode(problem);
    });
    const onBase = (values: Float64Array) =>
      resample(seenMs, values, missing, timesMs, frameIntervalMs, reasonCode('frames-missing'));
    const roughX = onBase(xPx);
    const smoothX = smoothRuns(roughX, filter);
    return {
      xPx: smoothX,
      yPx: smoothRuns(onBase(yPx), filter),
      jitterPx: passedJitterPx(roughX, smoothX, (2 * cutoffHz) / rateHz),
    };
  };
  return {
    timesMs,
    rateHz,
    frameRateHz,
    jumpedFrames: jumped.filter(Boolean).length,
    point(name) {
      const point = known.get(name) ?? read(name);
      known.set(name, point);
      return point;
    },
  };
}

/**
 * Jitter that remains after smoothing, estimated from what the smoothing removed.
 *
 * @param passedShare  share of white noise's power that the filter lets through
 * @returns  one standard deviation, px; from the median, so that single jumps do not count
 */
function passedJitterPx(rough: UniformSignal, smooth: UniformSignal, passedShare: number): number {
  const takenPx: number[] = [];
  const step = Math.ceil(rough.values.length / mostJitterSamples);
  for (let i = 0; i < rough.values.length; i += step) {
    if (rough.missing[i] === 0) takenPx.push(Math.abs(rough.values[i]! - smooth.values[i]!));
  }
  const medianPx = medianOf(takenPx) ?? 0;
  const share = Math.min(0.8, passedShare);
  return madToSd * medianPx * Math.sqrt(share / (1 - share));
}

/** Position of a point at a sample; only meaningful where it is not missing. */
export function pointAt({ xPx, yPx }: SmoothPoint, sample: number): Point {
  return { x: xPx.values[sample]!, y: yPx.values[sample]! };
}

/** Position half-way between two points at a sample; only meaningful where neither is missing. */
export function middleAt([a, b]: readonly [SmoothPoint, SmoothPoint], sample: number): Point {
  return {
    x: (a.xPx.values[sample]! + b.xPx.values[sample]!) / 2,
    y: (a.yPx.values[sample]! + b.yPx.values[sample]!) / 2,
  };
}

/** Code of the first point that is missing at a sample, otherwise 0. */
export function missingAt(points: readonly SmoothPoint[], sample: number): number {
  for (const { xPx } of points) if (xPx.missing[sample] !== 0) return xPx.missing[sample]!;
  return 0;
}
