import type { Sureness } from '#core/chance/grade';
import { frameLeg } from '#core/keypoints/frameLeg';
import type { KeypointTrack } from '#core/keypoints/keypointTrack';
import type { Measurement } from '#core/measurement/measurement';
import type { Limits } from '#core/protocol/limits';
import { kneeStateAt } from '#core/scoring/kneeStateAt';
import { nearestFrame } from '#core/scoring/nearestFrame';
import type { Context2d } from './canvasShapes';
import { drawKnee } from './drawKnee';
import { drawLane } from './drawLane';
import { drawLegLines } from './drawLegLines';
import { laneAngles } from './laneAngles';
import { laneShape } from './laneShape';

export interface LegScene {
  track: KeypointTrack;
  measurement: Measurement;
  limits: Limits;
  /** How sure it has to be before a side is named. */
  sureness: Sureness;
}

/**
 * Draws the working leg with its lane as it was seen in the frame nearest to a time.
 *
 * @param context  its units are picture px
 * @param unit     picture px for one px on the screen, so that lines look the same at every size
 */
export function drawLegAt(
  context: Context2d,
  { track, measurement, limits, sureness }: LegScene,
  timeMs: number,
  unit: number,
) {
  const { side } = measurement.setup;
  const leg = frameLeg(track, nearestFrame(track.timesMs, timeMs), side);
  const state = kneeStateAt(measurement, limits, timeMs, sureness);
  // From a turned view the picture says nothing about the limits, and a lane in it would mislead.
  const hasLane = state.reason !== 'view-turned';
  const lane = hasLane ? laneShape(leg, side, laneAngles(leg, side, limits, state.deg)) : null;
  if (lane !== null) drawLane(context, lane, state.deg === null ? 'faint' : 'full', unit);
  drawLegLines(context, leg, unit);
  if (leg.knee !== null) drawKnee(context, leg.knee, state, side, unit);
}
