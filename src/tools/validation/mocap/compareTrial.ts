import { median } from 'd3-array';
import { kneeProjectionAngleDeg } from '#core/geometry/kneeProjectionAngleDeg';
import { keypointCount, keypointNames } from '#core/keypoints/keypointNames';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import { curveValue } from '#core/measurement/curve';
import { measure } from '#core/measurement/measure';
import type { Side } from '#core/protocol/side';
import { filmTrial, type FilmingCamera } from './filmTrial';
import { mocapRateHz, trueFrontalDeg, type MocapFrame } from './jointCentres';

/** A knee bent by less than this much of the hips' way is not compared: the task is the bend, not the standing. */
const bentFrom = 0.15;

export interface TrialComparison {
  /** Peak inward angle from own standing, degrees: in the 3-D positions, as measured, and as the picture shows it. */
  truePeakDeg: number;
  measuredPeakDeg: number;
  bandDeg: number;
  picturePeakDeg: number;
  /** Estimated yaw less the camera's, degrees. */
  yawErrorDeg: number;
}

/**
 * Films a trial, measures the film, and holds one knee's peak against the 3-D positions.
 *
 * @returns  null where no repetition is measured
 */
export function compareTrial(
  frames: readonly MocapFrame[],
  side: Side,
  camera: FilmingCamera,
): TrialComparison | null {
  const track = filmTrial(frames, camera);
  const measurement = measure(track, { task: 'two-legged-bend', side });
  const [repetition] = measurement.repetitions;
  const peak = repetition?.ranges['knee-angle'].max ?? null;
  if (repetition === undefined || peak === null || measurement.view === null) return null;
  const { loadedFrom, loadedTo } = repetition;
  const standing = frames.slice(0, Math.round(bentFrom * mocapRateHz));
  const trueStandingDeg = median(standing, (frame) => trueFrontalDeg(frame, side))!;
  const pictureStandingDeg = pictureDeg(track, 0, side);
  const moments: { trueDeg: number; pictureDeg: number }[] = [];
  for (let i = loadedFrom; i <= loadedTo; i++) {
    if (curveValue(measurement.curves['knee-angle'], i) === null) continue;
    const timeMs = measurement.timesMs[i]!;
    const frame = frames[Math.min(frames.length - 1, Math.round((timeMs * mocapRateHz) / 1000))]!;
    const filmed = nearest(track.timesMs, timeMs);
    moments.push({
      trueDeg: trueFrontalDeg(frame, side) - trueStandingDeg,
      pictureDeg: pictureDeg(track, filmed, side) - pictureStandingDeg,
    });
  }
  return {
    truePeakDeg: Math.max(...moments.map(({ trueDeg }) => trueDeg)),
    measuredPeakDeg: peak.value,
    bandDeg: peak.band,
    picturePeakDeg: Math.max(...moments.map((moment) => moment.pictureDeg)),
    // A camera towards the person's left sees the front point to the picture's left.
    yawErrorDeg: measurement.view.yawDeg + camera.yawDeg,
  };
}

function nearest(timesMs: Float64Array, timeMs: number): number {
  const spacingMs = timesMs[1]! - timesMs[0]!;
  return Math.min(timesMs.length - 1, Math.round(timeMs / spacingMs));
}

function pictureDeg(track: KeypointTrack, frame: number, side: Side): number {
  const point = (joint: 'hip' | 'knee' | 'ankle') => {
    const at = frame * keypointCount + keypointNames.indexOf(`${side}_${joint}`);
    return { x: track.xPx[at]!, y: track.yPx[at]! };
  };
  return kneeProjectionAngleDeg(point('hip'), point('knee'), point('ankle'), side) ?? 0;
}
