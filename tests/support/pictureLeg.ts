import type { Side } from '#core/protocol/side';
import type { PictureJoint, PictureLeg } from '#core/view/liftLeg';
import { upright } from './pinholeCamera';
import type { Film } from './syntheticPerson';

/** Focal length of the usual synthetic camera, px. */
export const filmFocalPx = upright.focalPx;

type LegJoint = 'hip' | 'knee' | 'ankle' | 'heel' | 'foot_index';

/** A joint as an unerring eye sees it in the usual picture, from the picture's centre. */
export function pictureJoint({ frames }: Film, side: Side, joint: LegJoint): PictureJoint {
  const points = frames.map((frame) => frame.points[`${side}_${joint}`]);
  return {
    xPx: Float64Array.from(points, ({ xPx }) => xPx - upright.widthPx / 2),
    yPx: Float64Array.from(points, ({ yPx }) => yPx - upright.heightPx / 2),
  };
}

export function pictureLeg(film: Film, side: Side): PictureLeg {
  const joint = (name: LegJoint) => pictureJoint(film, side, name);
  const seen = new Uint8Array(film.frames.length).fill(1);
  return { hip: joint('hip'), knee: joint('knee'), ankle: joint('ankle'), seen };
}
