import type { KeypointName } from '../keypoints/keypointNames';
import { cosSin } from '../view/bodyFrame';
import type { PictureSize } from './pictureLeg';
import type { SmoothPoint, SmoothPoints } from './smoothPoints';

/**
 * The points as a level camera would have seen them: rotated about the picture's centre; each computed once,
 * on demand.
 */
export function levelPoints(points: SmoothPoints, rollDeg: number, size: PictureSize): SmoothPoints {
  const [cos, sin] = cosSin(rollDeg);
  const [centreX, centreY] = [size.widthPx / 2, size.heightPx / 2];
  const known = new Map<KeypointName, SmoothPoint>();
  const turn = ({ xPx, yPx, jitterPx }: SmoothPoint): SmoothPoint => {
    const [x, y] = [new Float64Array(xPx.values.length), new Float64Array(yPx.values.length)];
    for (let i = 0; i < x.length; i++) {
      const [right, down] = [xPx.values[i]! - centreX, yPx.values[i]! - centreY];
      x[i] = centreX + right * cos + down * sin;
      y[i] = centreY + down * cos - right * sin;
    }
    return { xPx: { ...xPx, values: x }, yPx: { ...yPx, values: y }, jitterPx };
  };
  return {
    ...points,
    point(name) {
      const point = known.get(name) ?? turn(points.point(name));
      known.set(name, point);
      return point;
    },
  };
}
