import { rowLeg } from '#core/keypoints/frameLeg';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { showsThigh } from '#core/measurement/showsThigh';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import { disc, legColour, type Context2d } from './canvasShapes';
import { drawLane } from './drawLane';
import { drawLegLines } from './drawLegLines';
import { laneAngles } from './laneAngles';
import { laneShape } from './laneShape';

export interface LiveScene {
  /** Joints of one picture, px of the camera's picture as filmed. */
  row: KeypointRow;
  side: Side;
  /** Null where no lane is shown. */
  limits: Limits | null;
}

/**
 * Draws the working leg as it is seen just now, with its lane. Nothing is judged: the knee is a plain dot, and the lane
 * stands where it does for somebody who faces the camera squarely.
 *
 * @param context  its units are picture px
 * @param unit     picture px for one px on the screen, so that lines look the same at every size
 */
export function drawLiveLeg(context: Context2d, scene: LiveScene, unit: number): void {
  const { row, side, limits } = scene;
  const leg = rowLeg(row, side);
  const lane = limits === null ? null : laneShape(leg, side, laneAngles(leg, side, limits, null));
  if (lane !== null) drawLane(context, lane, showsThigh(leg) ? 'full' : 'faint', unit);
  drawLegLines(context, leg, unit);
  if (leg.knee !== null) disc(context, leg.knee, 7 * unit, legColour, unit);
}
