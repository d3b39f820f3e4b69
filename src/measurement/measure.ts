import { median } from 'd3-array';
import { frameCount, type KeypointTrack } from '../keypoints/keypointTrack';
import { hasPerson } from '../keypoints/observedPoint';
import { findTask } from '../protocol/tasks';
import { findRepetitions, type FoundRepetition } from '../segmentation/findRepetitions';
import { missingReasons, type Curve, type MissingReason } from './curve';
import { doubtSide } from './doubtSide';
import { legCurves, type LegCurves } from './legCurves';
import { measuringVersion, type Extreme, type MeasuredRepetition } from './measurement';
import type { Measurement, MeasurementNote, Setup } from './measurement';
import { missingAt, pointAt, smoothPoints, type SmoothPoint, type SmoothPoints } from './smoothPoints';

/** Thigh plus shank as a share of the torso from hips to shoulders; Drillis & Contini, from memory: (.245 + .246) / .288. */
const legToTorso = 1.7;
/** Below this frame rate a fast repetition falls between the frames, Hz: common practice, no source. */
const leastFrameRateHz = 15;

/**
 * Measures a recording: from the joints seen in each frame to repetitions with their angles.
 *
 * Frame:   picture plane; the person faces the camera
 * @param track  observed joints, never changed
 * @param setup  task and working side, the person's own
 * @returns  curves on a uniform time base, repetitions, and notes on what to know before trusting them
 */
export function measure(track: KeypointTrack, setup: Setup): Measurement {
  const task = findTask(setup.task);
  const points = smoothPoints(track);
  const leg = legCurves(points, setup.side);
  const found = findRepetitions(task, heights(points, leg));
  const repetitions = found.map((repetition, index) => describe(repetition, index, points.timesMs, leg));
  return {
    version: measuringVersion,
    setup,
    timesMs: points.timesMs,
    rateHz: points.rateHz,
    ...leg,
    repetitions,
    notes: collectNotes(track, setup, points, leg, repetitions),
  };
}

/** Heights of hips and shoulders over time, share of leg length; where unseen, the last value is held. */
function heights(points: SmoothPoints, leg: LegCurves) {
  const hips = [points.point('left_hip'), points.point('right_hip')];
  const shoulders = [points.point('left_shoulder'), points.point('right_shoulder')];
  const hipY = middleY(hips, points.timesMs.length);
  const shoulderY = middleY(shoulders, points.timesMs.length);
  const torsoPx = median(hipY.map((y, i) => Math.abs(y - shoulderY[i]!))) ?? 0;
  const scalePx = leg.legLengthPx ?? (torsoPx > 0 ? torsoPx * legToTorso : 1);
  return {
    timesMs: points.timesMs,
    hipHeight: hipY.map((y) => -y / scalePx),
    shoulderHeight: shoulderY.map((y) => -y / scalePx),
  };
}

function middleY(pair: SmoothPoint[], count: number): Float64Array {
  const y = new Float64Array(count);
  let last: number | null = null;
  for (let i = 0; i < count; i++) {
    if (missingAt(pair, i) === 0) {
      const here = (pointAt(pair[0]!, i).y + pointAt(pair[1]!, i).y) / 2;
      if (last === null) y.fill(here, 0, i);
      last = here;
    }
    y[i] = last ?? 0;
  }
  return y;
}

function describe(
  { completeness, events, loadedFrom, loadedTo }: FoundRepetition,
  index: number,
  timesMs: Float64Array,
  leg: LegCurves,
): MeasuredRepetition {
  const angle = summarise(leg.kneeAngleDeg, timesMs, loadedFrom, loadedTo);
  const deviation = summarise(leg.kneeDeviation, timesMs, loadedFrom, loadedTo);
  return {
    number: index + 1,
    completeness,
    events,
    loadedFrom,
    loadedTo,
    measuredShare: angle.measuredShare,
    mainReason: angle.mainReason,
    kneeAngleMaxDeg: angle.max,
    kneeAngleMinDeg: angle.min,
    kneeDeviation: farther(deviation.max, deviation.min),
  };
}

interface Summary {
  measuredShare: number;
  mainReason: MissingReason | null;
  max: Extreme | null;
  min: Extreme | null;
}

/** Extremes of a curve between two samples (both included) and what is missing there. */
function summarise(curve: Curve, timesMs: Float64Array, from: number, to: number): Summary {
  const counts = new Array<number>(missingReasons.length).fill(0);
  let max: Extreme | null = null;
  let min: Extreme | null = null;
  for (let sample = from; sample <= to; sample++) {
    const code = curve.missing[sample]!;
    counts[code]!++;
    if (code !== 0) continue;
    const here = { value: curve.values[sample]!, sample, timeMs: timesMs[sample]! };
    if (max === null || here.value > max.value) max = here;
    if (min === null || here.value < min.value) min = here;
  }
  const [measured = 0, ...missing] = counts;
  const most = Math.max(...missing);
  return {
    measuredShare: measured / (to - from + 1),
    mainReason: most === 0 ? null : (missingReasons[missing.indexOf(most) + 1] as MissingReason),
    max,
    min,
  };
}

function farther(a: Extreme | null, b: Extreme | null): Extreme | null {
  if (a === null || b === null) return a ?? b;
  return Math.abs(b.value) > Math.abs(a.value) ? b : a;
}

function collectNotes(
  track: KeypointTrack,
  setup: Setup,
  points: SmoothPoints,
  leg: LegCurves,
  repetitions: readonly MeasuredRepetition[],
): MeasurementNote[] {
  const notes: MeasurementNote[] = [];
  const frames = frameCount(track);
  let framesWithPerson = 0;
  for (let frame = 0; frame < frames; frame++) if (hasPerson(track, frame)) framesWithPerson++;
  if (framesWithPerson < 0.1 * frames || frames === 0)
    return [{ kind: 'no-person', framesWithPerson, frames }];
  if (points.jumpedFrames > 0) notes.push({ kind: 'somebody-else', frames: points.jumpedFrames });
  if (points.frameRateHz < leastFrameRateHz)
    notes.push({ kind: 'few-frames', frameRateHz: points.frameRateHz });
  const unseen = mostlyMissing(leg.kneeDeviation);
  if (unseen !== null) notes.push({ kind: 'legs-not-seen', reason: unseen });
  if (repetitions.length === 0) notes.push({ kind: 'no-repetitions' });
  if (doubtSide(points, setup, leg.legLengthPx, repetitions))
    notes.push({ kind: 'side-doubtful', side: setup.side });
  return notes;
}

/** The main reason of a curve that is missing for more than half of the time, else null. */
function mostlyMissing(curve: Curve): MissingReason | null {
  const { measuredShare, mainReason } = summarise(curve, new Float64Array(), 0, curve.values.length - 1);
  return measuredShare < 0.5 ? mainReason : null;
}
