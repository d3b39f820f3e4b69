import { rowLeg } from '#core/keypoints/frameLeg';
import type { KeypointRow } from '#core/keypoints/keypointTrack';
import { showsThigh } from '#core/measurement/showsThigh';
import type { Limits } from '#core/protocol/limits';
import type { Side } from '#core/protocol/side';
import type { KneeState } from '#core/scoring/kneeStateAt';
import { disc, legColour, type Context2d } from './canvasShapes';
import { drawKnee } from './drawKnee';
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
  /** The knee against its limits at this moment; left out or null, it is a plain dot. */
  knee?: Pick<KneeState, 'verdict' | 'direction'> | null;
}

/**
 * How many times larger the knee's mark is than beside a mouse: the colour of each form is 78 px of a phone's page at
 * least, which are 14 mm, 16 minutes of arc from three metres.
 */
const markTimes = 2.9;

/**
 * Draws the working leg as it is seen at this moment, with its lane, which is placed as for somebody who faces the
 * camera squarely, and its knee in the form and colour of what was measured, where it was.
 *
 * @param context  its units are picture px
 * @param unit     picture px for one px on the screen, so that lines look the same at every size
 */
export function drawLiveLeg(context: Context2d, scene: LiveScene, unit: number): void {
  const { row, side, limits, knee = null } = scene;
  const leg = rowLeg(row, side);
  const lane = limits === null ? null : laneShape(leg, side, laneAngles(leg, side, limits, null));
  if (lane !== null) drawLane(context, lane, showsThigh(leg) ? 'full' : 'faint', unit);
  drawLegLines(context, leg, unit);
  if (leg.knee === null) return;
  if (knee === null) disc(context, leg.knee, 7 * unit, legColour, unit);
  else drawKnee(context, leg.knee, knee, side, markTimes * unit);
}
